import { describe, expect, it } from 'vitest';
import { playwrightOutcome } from '@/scripts/test/playwright-report.mjs';
import { agreeing } from '@/scripts/test/run-with-report.mjs';
import { missingInWords, missingTools, TOOLS } from '@/scripts/test/system-tools.mjs';
import { sum, summaryLine } from '@/scripts/test/tally.mjs';
import { vitestOutcome } from '@/scripts/test/vitest-report.mjs';
import { temporaryFolder } from '@/tests/support/temporary-folder';

const test = (fullName: string, status: string, failureMessages: string[] = []) => ({ fullName, status, failureMessages });
const file = (status: string, assertionResults: ReturnType<typeof test>[], message = '') => ({ name: '/p/tests/a.test.ts', status, message, assertionResults });

describe('the report of vitest', () => {
  it('is counted, with an excerpt of each failure', () => {
    const report = { success: false, testResults: [file('failed', [test('adds', 'passed'), test('divides', 'failed', ['expected 1 at /p/lib/a.ts']), test('on PostgreSQL', 'skipped')])] };
    expect(vitestOutcome(report, '/p')).toEqual({ passed: 1, failed: 1, skipped: 1, excerpt: ['divides', '  expected 1 at lib/a.ts'] });
  });

  it('counts a file that could not be run', () => {
    const outcome = vitestOutcome({ success: false, testResults: [file('failed', [], 'Cannot find module')] }, '/p');
    expect(outcome).toMatchObject({ passed: 0, failed: 1 });
    expect(outcome.excerpt).toEqual(['tests/a.test.ts could not be run', '  Cannot find module']);
  });

  it('counts an error outside of every test', () => {
    expect(vitestOutcome({ success: false, testResults: [file('passed', [test('adds', 'passed')])] }, '/p')).toMatchObject({ passed: 1, failed: 1 });
  });
});

describe('the report of Playwright', () => {
  const stats = { expected: 2, unexpected: 1, flaky: 1, skipped: 1 };
  const red = `${String.fromCharCode(27)}[31m`;
  const spec = { title: 'shows the ranking', ok: false, tests: [{ results: [{ errors: [{ message: `${red}not visible` }] }] }] };

  it('is counted, a test that passed only when repeated as failed', () => {
    const outcome = playwrightOutcome({ stats, errors: [], suites: [{ title: 'try.spec.ts', suites: [{ title: 'at 360 px', specs: [spec] }] }] });
    expect(outcome).toEqual({ passed: 2, failed: 2, skipped: 1, excerpt: ['try.spec.ts › at 360 px › shows the ranking', '  not visible'] });
  });

  it('counts an error outside of the tests', () => {
    const none = { expected: 0, unexpected: 0, flaky: 0, skipped: 0 };
    expect(playwrightOutcome({ stats: none, errors: [{ message: 'no server' }], suites: [] })).toMatchObject({ failed: 1, excerpt: ['  no server'] });
  });
});

describe('agreeing', () => {
  const outcome = { passed: 3, failed: 0, skipped: 0, excerpt: [] };
  it('believes a report that fits how its runner ended', () => {
    expect(agreeing(outcome, { ok: true, output: '' })).toBe(outcome);
  });
  it('adds a failure for a runner that failed without a failed test, and for no tests at all', () => {
    expect(agreeing(outcome, { ok: false, output: 'out of memory' })).toMatchObject({ failed: 1, excerpt: ['out of memory'] });
    expect(agreeing({ ...outcome, passed: 0 }, { ok: true, output: '' })).toMatchObject({ failed: 1 });
  });
});

describe('the last line', () => {
  it('names what was skipped only when something was', () => {
    expect(summaryLine(sum([{ passed: 1, failed: 0, skipped: 0 }, { passed: 2, failed: 1, skipped: 0 }]))).toBe('3 passed, 1 failed');
    expect(summaryLine({ passed: 3, failed: 0, skipped: 2 })).toBe('3 passed, 0 failed, 2 skipped');
  });
});

describe('the programs the tests call', () => {
  it('are all missing on an empty path, but for a browser that stands elsewhere', () => {
    const missing = missingTools(temporaryFolder()).map((tool) => tool.command);
    expect(missing).toEqual(expect.arrayContaining(['pdfinfo', 'qpdf', 'openssl', 'zbarimg']));
  });

  it.each([
    ['linux', 'sudo apt-get install chromium poppler-utils qpdf openssl zbar-tools'],
    ['darwin', 'brew install --cask chromium poppler qpdf openssl zbar'],
    ['win32', 'WSL'],
  ] as const)('are named with how to get them on %s', (platform, words) => {
    const lines = missingInWords(TOOLS, platform).join('\n');
    expect(lines).toContain('Missing: qpdf, which checks');
    expect(lines).toContain(words);
  });
});

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { ScoreResult } from '@/lib/core/result';
import { seedFromHash } from '@/lib/interchange/input-hash';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { readSource } from '@/scripts/read-source';
import { HELP, scoreArguments } from '@/scripts/score-arguments';
import { venueDocument } from '@/tests/support/assessment-text';
import { expectWithin } from '@/tests/support/expect-within';
import { expectedOf } from '@/tests/support/reference-venues';

const HALL = 'public/examples/good-hall.json';
function command(words: readonly string[], input?: string | Uint8Array) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['node_modules/tsx/dist/cli.mjs', 'scripts/score.ts', ...words], { input, encoding: 'utf8' });
  return { status, stdout, stderr };
}

describe('the words behind the command', () => {
  it.each([
    [['a.json'], { kind: 'score', source: 'a.json', text: false, seed: undefined, draws: 4000, edition: undefined }],
    [['-', '--text'], { kind: 'score', source: '-', text: true, seed: undefined, draws: 4000, edition: undefined }],
    [['--seed', '0', '--draws=100', 'a.json'], { kind: 'score', source: 'a.json', text: false, seed: 0, draws: 100, edition: undefined }],
    [['--draws', '1000000', '--seed', '4294967295', 'a.json'], { kind: 'score', source: 'a.json', text: false, seed: 4_294_967_295, draws: 1_000_000, edition: undefined }],
    [['a.json', '--edition', '1'], { kind: 'score', source: 'a.json', text: false, seed: undefined, draws: 4000, edition: 1 }],
    [['--help'], { kind: 'help' }],
    [['-h'], { kind: 'help' }],
  ])('%j are read', (words, expected) => {
    expect(scoreArguments(words)).toEqual(expected);
  });

  it.each([
    [[], 'Which assessment? Give a file, or - for standard input. See --help.'],
    [['a.json', 'b.json'], 'One assessment at a time, not 2.'],
    [['a.json', '--sed', '7'], 'There is no option --sed. See --help.'],
    [['a.json', '-x'], 'There is no option -x. See --help.'],
    [['a.json', '--text=yes'], '--text takes no value.'],
    [['a.json', '--seed'], '--seed wants a whole number from 0 to 4294967295.'],
    [['a.json', '--seed', '4294967296'], '--seed wants a whole number from 0 to 4294967295, not "4294967296".'],
    [['a.json', '--seed=-1'], '--seed wants a whole number from 0 to 4294967295, not "-1".'],
    [['a.json', '--seed=1.5'], '--seed wants a whole number from 0 to 4294967295, not "1.5".'],
    [['a.json', '--draws', '99'], '--draws wants a whole number from 100 to 1000000, not "99".'],
    [['a.json', '--edition', '0'], '--edition wants a whole number from 1 to 999, not "0".'],
    [['a.json', '--edition', 'one'], '--edition wants a whole number from 1 to 999, not "one".'],
    [['a.json', '--draws', '1e5'], '--draws wants a whole number from 100 to 1000000, not "1e5".'],
  ])('%j are refused in words', (words, reason) => {
    expect(scoreArguments(words)).toEqual({ kind: 'refused', reason });
  });
});

describe('a source', () => {
  const folder = mkdtempSync(join(tmpdir(), 'score-command-'));
  const notText = join(folder, 'not-text.json');
  writeFileSync(notText, Uint8Array.of(0x7b, 0xff, 0xfe, 0x7d));
  const huge = join(folder, 'huge.json');
  writeFileSync(huge, ' '.repeat(2_000_001));
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each([
    ['that is not there', 'nowhere.json', '"nowhere.json" cannot be read: there is no such file.'],
    ['that is a folder', 'lib', '"lib" cannot be read: it is a folder, not a file.'],
    ['that is not text', notText, `${JSON.stringify(notText)} cannot be read: it is not text in UTF-8.`],
    ['that does not end', huge, `${JSON.stringify(huge)} is longer than any assessment: over 2 megabytes.`],
  ])('%s is refused in words', async (_, source, reason) => {
    expect(await readSource(source)).toEqual({ ok: false, reason });
  });

  it('that is a file is read whole', async () => {
    expect(await readSource(HALL)).toEqual({ ok: true, text: readFileSync(HALL, 'utf8') });
  });
});

describe('the command', () => {
  it('prints the same bytes for the same document, with the seed of its fingerprint', () => {
    const first = command([HALL, '--draws', '100']);
    const result = JSON.parse(first.stdout) as ScoreResult;
    const read = readAssessment(readFileSync(HALL, 'utf8'));
    expect([first.status, first.stderr]).toEqual([0, '']);
    expect(result).toMatchObject({ venue: 'good-hall', draws: 100, inputHash: read.ok ? read.inputHash : '', seed: seedFromHash(result.inputHash) });
    expect(command([HALL, '--draws', '100']).stdout).toBe(first.stdout);
  });

  it('reads standard input, and takes the seed of the document', () => {
    const { stdout } = command(['-', '--draws', '100'], JSON.stringify(venueDocument('everything')));
    expect((JSON.parse(stdout) as ScoreResult).seed).toBe(7);
  });

  it('prints a table, with the seed it was given', () => {
    const { status, stdout } = command([HALL, '--text', '--draws', '100', '--seed', '11']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Good hall: boxes, an outdoor store and a practised team\nNo stop condition holds\./);
    expect(stdout).toContain('seed 11, 100 draws.');
  });

  it('puts each fault on its own line, and nothing on standard output', () => {
    const { status, stdout, stderr } = command(['tests/reference-data/faulty/10-out-of-range.json']);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr.trimEnd().split('\n')).toEqual([
      '$.answers["team-packs"].packs: is 401; right would be: a number from 1 to 400 packs',
      '$.answers["team-use"].crashShare: is 31; right would be: a number from 0 to 1',
      '$.answers["room-size"].chargingVolume: is -3; right would be: a number from 4 to 50,000 m³',
      '$.answers["room-leave"].chargingEvac: is 5; right would be: a number from 15 to 1,800 s',
    ]);
  });

  it('scores with the edition in force, or with an older one that is asked for', () => {
    const older = JSON.stringify({ ...venueDocument('good-hall'), contentVersion: '0.1.0' });
    const now = JSON.parse(command(['-', '--draws', '100'], older).stdout) as ScoreResult;
    expect([now.contentVersion, now.contentEdition]).toEqual(['2.0.0', 2]);
    const then = JSON.parse(command(['-', '--draws', '100', '--edition', '1'], older).stdout) as ScoreResult;
    expect([then.contentVersion, then.contentEdition]).toEqual(['0.1.0', 1]);
    expectWithin(then.totalHarm, expectedOf('good-hall').totalHarm, { rel: 1e-9 });
  });

  it('says in the table what an older document could not be asked', () => {
    const { stdout } = command(['-', '--text', '--draws', '100'], JSON.stringify({ ...venueDocument('good-hall'), contentVersion: '0.1.0' }));
    expect(stdout.replaceAll(/\s+/g, ' ')).toMatch(/\$\.contentVersion is of edition 1; it is read with edition 2: \d+ questions and \d+ lines of its lists that apply here were not there when it was written/);
    expect(stdout).toMatch(/content edition 2\s+\(2\.0\.0\)/);
  });

  it('refuses an edition that was never published, and a document that is later than the edition', () => {
    expect(command([HALL, '--edition', '99'])).toEqual({ status: 2, stdout: '', stderr: 'There is no edition 99. There is: 1, 2.\n' });
    const { status, stderr } = command(['tests/reference-data/faulty/21-lines-wrong.json', '--edition', '1']);
    expect([status, stderr]).toEqual([2, '$.contentVersion: is the text "2.0.0", an edition later than the one it is read with; right would be: one of "0.1.0", or nothing for the edition it is read with\n']);
  });

  it('refuses to guess what to score', () => {
    expect(command([])).toEqual({ status: 2, stdout: '', stderr: 'Which assessment? Give a file, or - for standard input. See --help.\n' });
  });
});

it('the help fits on a terminal', () => {
  expect(HELP).toContain('npm run --silent score -- assessment.json');
  expect(HELP.split('\n').every((line) => line.length <= 80)).toBe(true);
});

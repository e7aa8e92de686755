import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Mark } from '@/lib/charts/scene';
import { fontsForWords } from '@/lib/pdf/render/fonts/fonts-for-words';
import { writableModel, writableText } from '@/lib/pdf/render/fonts/writable';
import { letters, TYPE } from '@/lib/pdf/render/paper-type';
import { signatureRectangle } from '@/lib/pdf/render/signature-geometry';
import { CAUTION } from '@/lib/wording/caution';
import { renderSample } from '@/tests/support/pdf/sample-paper';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';
import { temporaryFolder } from '@/tests/support/temporary-folder';

const NAMES = [
  'Łukasz Żółć', 'José Núñez', 'Zoë Strauß', 'Ștefan Țurcanu', 'Đặng Thị Hồng', 'Ægir Ðórsson', 'Αλέξανδρος Παπαδόπουλος', 'Ольга Шевченко', 'Ђорђе Јовановић',
  '王小明', '山田太郎', '김민수', 'สมชาย ใจดี', 'Նարեկ Սարգսյան', 'ნინო ბერიძე',
];
const SIGNS = 'é ñ ü ł Ą ő ß ≤ ≥ ² ³ °C µ → Ω ± × CO₂ 20–30 “quoted” it’s';

describe('a paper', () => {
  it('gives its texts back as they were, in every script', async () => {
    const text = textOf(await renderSample({ lines: [...NAMES, SIGNS] }));
    for (const line of [...NAMES, SIGNS]) expect(text).toContain(line);
  });

  it('keeps words whole in a narrow place, whatever the script', async () => {
    const text = textOf(await renderSample({ lines: Array.from({ length: 60 }, (_, length) => `${'x'.repeat(length)} Łukasz Müller-Πάππος Ольга (Anna) 王小明`) }));
    expect(text).not.toMatch(/-\s*\n/);
  });

  it('has the caution, its number, its fingerprint and page x of y on every page', async () => {
    const pdf = await renderSample({ lines: Array.from({ length: 120 }, (_, index) => `Line ${index}`) });
    const pages = textOf(pdf, '-layout').split('\f').slice(0, -1);
    expect(pages.length).toBeGreaterThan(2);
    pages.forEach((page, index) => {
      for (const words of [CAUTION, 'TL-26-0031', '9c41 07be 5d20 e83a', `page ${index + 1} of ${pages.length}`, 'Room 14, Tern Lane School', 'Cover']) expect(page).toContain(words);
    });
  });

  it('is of the size that was asked for', async () => {
    expect(runTool('pdfinfo', [asFile(await renderSample())]).text).toMatch(/Page size: +595\.28 x 841\.89 pts \(A4\)/);
    expect(runTool('pdfinfo', [asFile(await renderSample({ paper: 'LETTER' }))]).text).toMatch(/Page size: +612 x 792 pts \(letter\)/);
  });

  it('carries its fonts, cut down to what it uses', async () => {
    const lines = runTool('pdffonts', [asFile(await renderSample({ lines: NAMES }))]).text.trim().split('\n').slice(2);
    expect(lines.length).toBeGreaterThan(3);
    expect(lines.length).toBeLessThan(8);
    for (const line of lines) expect(line).toMatch(/ yes yes yes /);
  });

  it('has nothing smaller than nine points', async () => {
    const sizes = Array.from(runTool('pdftohtml', ['-xml', '-stdout', '-zoom', '1', asFile(await renderSample({ lines: NAMES }))]).text.matchAll(/<fontspec id="\d+" size="(\d+)"/g), ([, size]) => Number(size));
    expect(sizes.length).toBeGreaterThan(2);
    for (const size of sizes) expect(size).toBeGreaterThanOrEqual(9);
    for (const size of Object.values(TYPE)) expect(size).toBeGreaterThanOrEqual(9);
    expect(() => letters(8.9)).toThrow('too small');
    expect(() => letters(Number.NaN)).toThrow('too small');
  });

  it('has a QR code that another program reads', async () => {
    const address = 'https://tern-lane.example/verify?document=TL-26-0031&fingerprint=9c4107be5d20e83a';
    const picture = path.join(temporaryFolder(), 'page');
    for (const resolution of ['100', '200']) {
      runTool('pdftoppm', ['-r', resolution, '-png', '-singlefile', asFile(await renderSample({ verifyAt: address })), picture]);
      expect(runTool('zbarimg', ['--quiet', '--raw', `${picture}.png`]).text).toContain(address);
    }
  });

  it('leaves the place of the footer to the footer', () => {
    for (const paper of ['A4', 'LETTER'] as const) {
      const [left, bottom, right] = signatureRectangle(paper, 'Officer');
      expect(bottom).toBeGreaterThan(74);
      expect(left).toBeGreaterThan(signatureRectangle(paper, 'Preparer')[2]);
      expect(right).toBeLessThan(paper === 'A4' ? 595.28 - 40 : 612 - 40);
    }
  });
});

describe('a paper with a part that fails', () => {
  it('fails with what that part said', async () => {
    // The writer's own React prints it as well; that cannot be kept from it.
    await expect(renderSample({ scenes: [{ width: 326, height: 10, title: 't', marks: [null as unknown as Mark] }] })).rejects.toThrow("reading 'kind'");
  });
});

describe('the same paper', () => {
  it('is the same bytes, whatever the process has set before, and in another process', async () => {
    const hash = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
    const lines = ['Łukasz under nine', 'José', '王小明'];
    const first = hash(await renderSample({ lines }));
    await renderSample({ lines: ['úúú ąąą', ...NAMES] });
    expect(hash(await renderSample({ lines }))).toBe(first);
    const script = `import { renderSample } from './tests/support/pdf/sample-paper.tsx'; import { createHash } from 'node:crypto';
      const write = async () => process.stdout.write(createHash('sha256').update(await renderSample({ lines: ${JSON.stringify(lines)} })).digest('hex')); void write();`;
    const { stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], { encoding: 'utf8', env: { ...process.env, TZ: 'Asia/Tokyo' } });
    expect(stdout, stderr).toBe(first);
  });
});

describe('a text', () => {
  it('shows the number of a character that no font has, and leaves all others', () => {
    expect(writableText('Łukasz 王 Ω')).toBe('Łukasz 王 Ω');
    expect(writableText('吉 \u{20BB7}')).toBe('吉 [U+20BB7]');
    expect(writableText('a\nb\u200dc\u00ad')).toBe('a\nb\u200dc\u00ad');
  });

  it('is made writable wherever it stands in a model, and nothing else is touched', () => {
    const at = new Date(0);
    const bytes = Uint8Array.of(1);
    expect(writableModel({ a: ['\u{20BB7}'], b: { c: '\u{20BB7}' }, at, bytes, n: 1, none: undefined })).toEqual({ a: ['[U+20BB7]'], b: { c: '[U+20BB7]' }, at, bytes, n: 1, none: undefined });
  });

  it('changes its font between words only', () => {
    expect(fontsForWords('Anna Łukasz Πάππος-Müller 王小明 Anna').map(({ text, families }) => [text, families[0]])).toEqual([
      ['Anna Łukasz ', 'Atkinson Hyperlegible Next'], ['Πάππος-Müller ', 'DejaVu Sans'], ['王小明 ', 'Unifont'], ['Anna', 'Atkinson Hyperlegible Next'],
    ]);
    expect(fontsForWords('')).toEqual([{ text: '', families: ['Atkinson Hyperlegible Next', 'DejaVu Sans', 'Unifont'] }]);
  });
});

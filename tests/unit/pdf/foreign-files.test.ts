import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkFile } from '@/lib/pdf/verify/check-file';
import { signedSample, type SignedSample } from '@/tests/support/pdf/signed-sample';
import { asFile, runTool } from '@/tests/support/pdf/tools';
import { temporaryFolder } from '@/tests/support/temporary-folder';

let sample: SignedSample;
beforeAll(async () => { sample = await signedSample(); }, 60_000);
const check = (pdf: Uint8Array, largest?: number) => checkFile(pdf, { authorities: [sample.school.authority.certificate], largest });

/** The signed file as another program saves it anew. */
function savedAnew(...options: string[]): Uint8Array {
  const out = path.join(temporaryFolder(), 'out.pdf');
  const { code, text } = runTool('qpdf', [...options, asFile(sample.signed), out]);
  if (code !== 0) throw new Error(text);
  return new Uint8Array(readFileSync(out));
}

describe('a file that another program saved anew', () => {
  it.each<[string, readonly string[], readonly string[]]>([
    ['with compressed cross-references', ['--object-streams=generate'], ['other-structure']],
    ['for reading page by page', ['--linearize'], ['damaged', 'other-structure']],
    ['with a password', ['--encrypt', '', 'owner', '256', '--'], ['encrypted', 'other-structure']],
    ['with an old password', ['--encrypt', 'user', 'owner', '128', '--use-aes=y', '--', '--object-streams=disable'], ['encrypted']],
  ])('is not read as if it were the one that was signed: %s', (_, options, faults) => {
    const result = check(savedAnew(...options));
    expect(result.state).toBe('unreadable');
    expect(faults).toContain('fault' in result ? result.fault : undefined);
  });

  it.each([['--object-streams=disable'], ['--qdf', '--object-streams=disable']])('and kept its form has broken signatures: %s', (...options) => { expect(['changed', 'foreign']).toContain(check(savedAnew(...options)).state); });
});

describe('something else than a paper of ours', () => {
  it.each<[string, Uint8Array, string]>([
    ['nothing at all', new Uint8Array(), 'empty'],
    ['a text', Buffer.from('Dear school,'), 'not-pdf'],
    ['a picture', Buffer.from('89504e470d0a1a0a', 'hex'), 'not-pdf'],
    ['a page that calls itself a PDF further down', Buffer.from('<html>%PDF-1.7</html>'), 'not-pdf'],
    ['a beginning', Buffer.from('%PDF-1.7\n%\xff\xff\n1 0 obj\n<<', 'latin1'), 'truncated'],
  ])('is called what it is: %s', (_, bytes, fault) => { expect(check(new Uint8Array(bytes))).toMatchObject({ state: 'unreadable', fault }); });

  it('is not looked at when it is too large', () => { expect(check(sample.signed, 1000)).toEqual({ state: 'unreadable', fault: 'too-large', fingerprint: '' }); });
});

describe('a hostile file', () => {
  const line = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');

  it('never makes the check throw, or take it for good', () => {
    const edit = fc.record({ at: fc.nat(), remove: fc.nat(200), insert: fc.oneof(fc.uint8Array({ maxLength: 60 }), fc.constantFrom('<<', '>>', '[[[[', '1 0 R', '/Kids [1 0 R]', 'endobj', 'xref\n0 1\n', '/Prev 1', '%%EOF\n', '<', '(', '/ByteRange [0 1 2 3]').map((text) => new Uint8Array(Buffer.from(text)))) });
    fc.assert(fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), (edits) => {
      let bytes = Buffer.from(sample.signed);
      for (const { at, remove, insert } of edits) {
        const position = at % (bytes.length + 1);
        bytes = Buffer.concat([bytes.subarray(0, position), insert, bytes.subarray(position + remove)]);
      }
      const same = bytes.equals(sample.signed) || bytes.equals(sample.prepared);
      expect(check(new Uint8Array(bytes)).state === 'unchanged').toBe(same);
    }), { numRuns: 200 });
  });

  it.each<[string, (text: string) => string]>([
    ['fields in a circle', (text) => text.replace(/\/FT \/Sig/, '/Kids [1 0')],
    ['a form that is its own field', (text) => text.replace(/\/Fields \[(\d+) 0 R/, (whole) => whole.replace(/\d+ 0 R/, '1 0 R'))],
    ['a byte range of another shape', (text) => text.replaceAll(/\/ByteRange \[0 \d+/g, (found) => found.replace('[0 ', '[1 '))],
    ['a byte range that leaves more out', (text) => text.replaceAll(/\/ByteRange \[0 (\d+)/g, (found, start: string) => found.replace(start, String(Number(start) - 10).padStart(start.length, '0')))],
  ])('is refused or called changed: %s', (_, edit) => {
    const text = edit(line(sample.signed));
    expect(text).not.toBe(line(sample.signed));
    expect(check(new Uint8Array(Buffer.from(text, 'latin1'))).state).not.toBe('unchanged');
  });

  it('cannot keep the check busy with an endless chain of revisions', () => {
    let text = '%PDF-1.7\n';
    let previous = 0;
    for (let count = 0; count < 40; count += 1) {
      const at = text.length;
      text += `xref\n0 1\n0000000000 65535 f \ntrailer\n<</Size 1 /Root 1 0 R${count === 0 ? '' : ` /Prev ${previous}`}>>\nstartxref\n${at}\n%%EOF\n`;
      previous = at;
    }
    expect(check(new Uint8Array(Buffer.from(text)))).toMatchObject({ fault: 'too-large' });
  });

  it('is read no slower for its size', () => {
    const padded = Buffer.concat([sample.signed, Buffer.alloc(20_000_000, ' ')]);
    const before = performance.now();
    expect(check(new Uint8Array(padded)).state).toBe('changed');
    expect(performance.now() - before).toBeLessThan(5000);
  });
});

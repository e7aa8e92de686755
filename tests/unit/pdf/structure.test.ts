import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latin1Bytes } from '@/lib/pdf/structure/characters';
import { Cursor } from '@/lib/pdf/structure/cursor';
import { openDocument } from '@/lib/pdf/structure/document';
import { arrayOf, dictOf, nameOf, refTo, type PdfValue } from '@/lib/pdf/structure/objects';
import { PdfFault } from '@/lib/pdf/structure/pdf-fault';
import { readFile } from '@/lib/pdf/structure/read-file';
import { readValue } from '@/lib/pdf/structure/read-value';
import { decodeText, pdfDate, readPdfDate, textString } from '@/lib/pdf/structure/text';
import { writeValue } from '@/lib/pdf/structure/write';

const read = (text: string) => readValue(new Cursor(latin1Bytes(text), 0));
const bytes = fc.uint8Array({ maxLength: 40 });
const name = fc.string({ minLength: 1, maxLength: 12, unit: fc.integer({ min: 1, max: 255 }).map((code) => String.fromCharCode(code)) });
const { value } = fc.letrec<{ value: PdfValue }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.constantFrom<PdfValue>(null, true, false), fc.integer(), fc.integer({ min: -99_999, max: 99_999 }).map((n) => n / 100), name.map(nameOf),
    fc.tuple(fc.nat(9999), fc.nat(99)).map(([number, generation]) => refTo(number, generation)),
    bytes.map((b): PdfValue => ({ kind: 'string', bytes: b, form: 'literal' })), bytes.map((b): PdfValue => ({ kind: 'string', bytes: b, form: 'hex' })),
    fc.array(tie('value'), { maxLength: 4 }).map(arrayOf), fc.dictionary(name, tie('value'), { maxKeys: 4 }).map(dictOf),
  ),
}));

describe('a value', () => {
  it('is read as it was written', () => {
    fc.assert(fc.property(value, (original) => { expect(Buffer.from(writeValue(read(Buffer.from(writeValue(original)).toString('latin1')))).toString('latin1')).toBe(Buffer.from(writeValue(original)).toString('latin1')); }));
  });

  // ISO 32000-2, 7.3: examples from memory.
  it.each<[string, PdfValue]>([
    ['-.002', -0.002], ['+17', 17], ['4.', 4], ['% comment\n true', true], ['/A#20B', nameOf('A B')], ['12 0 R', refTo(12)], ['[1 0 R 2]', arrayOf([refTo(1), 2])], ['[12 0 Right]', null],
  ])('is what the format says: %s', (text, expected) => {
    if (text.includes('Right')) expect(() => read(text)).toThrow(PdfFault);
    else expect(read(text)).toEqual(expected);
  });

  it.each([['(a\\(b\\)c)', 'a(b)c'], ['(a(b)c)', 'a(b)c'], ['(\\101\\7)', 'A\x07'], ['(a\\\nb)', 'ab'], ['<4 1 4>', 'A@']])('knows the escapes of strings: %s', (text, expected) => {
    const string = read(text);
    expect(string !== null && typeof string === 'object' && string.kind === 'string' && Buffer.from(string.bytes).toString('latin1')).toBe(expected);
  });

  it.each(['<</A 1 /A 2>>', '[1 2', '(a', '<12', '<1g>', '<</A>>', 'nul', '1.2.3', `${'['.repeat(60)}${']'.repeat(60)}`, ''])('is refused where it breaks the format: %s', (text) => { expect(() => read(text)).toThrow(PdfFault); });
});

describe('texts and times', () => {
  it('come back in every script', () => { fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => { expect(decodeText(textString(text))).toBe(text); })); });

  it('come back to the second', () => { expect(readPdfDate(decodeText(pdfDate(new Date('2026-11-25T16:42:07.900Z'))))).toEqual(new Date('2026-11-25T16:42:07Z')); });

  it.each(['D:20261325164200Z', 'D:2026', '25 November', "D:20261125164200+01'00'"])('are not guessed from %s', (text) => { expect(readPdfDate(text)).toBeUndefined(); });
});

/** A file of one revision out of its objects; `entry` may lie about where they stand. */
function fileOf(objects: readonly string[], { trailer = '', entry = (offset: number) => offset } = {}): Uint8Array {
  let text = '%PDF-1.7\n';
  const offsets = objects.map((object, index) => {
    const offset = text.length;
    text += `${index + 1} 0 obj\n${object}\nendobj\n`;
    return entry(offset);
  });
  const table = text.length;
  const lines = ['0000000000 65535 f ', ...offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n `)];
  return latin1Bytes(`${text}xref\n0 ${lines.length}\n${lines.join('\n')}\ntrailer\n<</Size ${lines.length} /Root 1 0 R${trailer}>>\nstartxref\n${table}\n%%EOF\n`);
}

function faultOf(bytes: Uint8Array, object?: number): string | undefined {
  try {
    const document = openDocument(readFile(bytes));
    if (object !== undefined) document.resolve(refTo(object));
    return undefined;
  } catch (error) {
    if (error instanceof PdfFault) return error.fault;
    throw error;
  }
}

describe('a file', () => {
  it('is read where it keeps the rules', () => { expect(openDocument(readFile(fileOf(['<</Type /Catalog>>', '<</Length 3 0 R>>\nstream\nabc\nendstream', '3']))).resolve(refTo(2))).toMatchObject({ kind: 'stream' }); });

  it.each<[string, Uint8Array, string]>([
    ['nothing', new Uint8Array(), 'empty'],
    ['something else', latin1Bytes('PK\x03\x04 and so on'), 'not-pdf'],
    ['only its beginning', latin1Bytes('%PDF-1.7\n1 0 obj\n'), 'truncated'],
    ['a password', fileOf(['<<>>'], { trailer: ' /Encrypt 1 0 R' }), 'encrypted'],
    ['two kinds of tables', fileOf(['<<>>'], { trailer: ' /XRefStm 9' }), 'other-structure'],
    ['a table that names itself as the one before', fileOf(['<<>>'], { trailer: ' /Prev 31' }), 'damaged'],
    ['an object outside of it', fileOf(['<<>>'], { entry: (offset) => offset + 9000 }), 'damaged'],
    ['an endless number of objects', latin1Bytes('%PDF-1.7\nxref\n0 9999999\ntrailer\n<<>>\nstartxref\n9\n%%EOF\n'), 'too-large'],
  ])('says what it is: %s', (_, file, fault) => { expect(faultOf(file)).toBe(fault); });

  it.each<[string, readonly string[], number]>([
    ['references in a circle', ['2 0 R', '1 0 R'], 1],
    ['a stream that is as long as itself', ['<</Length 1 0 R>>\nstream\nabc\nendstream'], 1],
    ['streams that are as long as each other', ['<</Length 2 0 R>>\nstream\nabc\nendstream', '<</Length 1 0 R>>\nstream\nabc\nendstream'], 1],
    ['a stream longer than the file', ['<</Length 99999>>\nstream\nabc\nendstream'], 1],
  ])('ends the reading of %s', (_, objects, number) => { expect(faultOf(fileOf(objects), number)).toBe('damaged'); });

  it('is not read past a limit', () => { expect(() => readFile(fileOf(['<<>>']), 10)).toThrow(/more than 10 bytes/); });
});

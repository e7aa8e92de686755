import { latin1 } from './characters';
import type { Cursor } from './cursor';
import type { PdfString } from './objects';
import { expectOfFile } from './pdf-fault';

/** Reads `<48 65>`; white space between the digits is allowed, an odd last digit is followed by a zero. */
export function readHexString(cursor: Cursor): PdfString {
  cursor.take('<');
  const start = cursor.position;
  const end = cursor.bytes.subarray(0, cursor.end).indexOf(0x3e, start);
  expectOfFile(end >= 0, 'a string of digits without an end');
  cursor.position = end + 1;
  const digits = latin1(cursor.bytes.subarray(start, end)).replaceAll(/[\0\t\n\f\r ]/g, '');
  expectOfFile(/^[\da-f]*$/i.test(digits), `a string of digits with something else after ${start}`);
  const even = digits.length % 2 === 0 ? digits : `${digits}0`;
  return { kind: 'string', bytes: new Uint8Array(Buffer.from(even, 'hex')), form: 'hex' };
}

/** Reads `(text)` with its escapes and with brackets inside, as long as those come in pairs. */
export function readLiteralString(cursor: Cursor): PdfString {
  cursor.take('(');
  const bytes: number[] = [];
  for (let open = 1; open > 0;) {
    const byte = cursor.peek();
    expectOfFile(byte !== undefined, 'a string without an end');
    cursor.position += 1;
    if (byte === BACKSLASH) { bytes.push(...readEscape(cursor)); continue; }
    if (byte === 0x28) open += 1;
    if (byte === 0x29) open -= 1;
    if (open > 0) bytes.push(byte);
  }
  return { kind: 'string', bytes: Uint8Array.from(bytes), form: 'literal' };
}

const BACKSLASH = 0x5c;
const ESCAPES: Readonly<Record<string, number>> = { n: 0x0a, r: 0x0d, t: 0x09, b: 0x08, f: 0x0c };

/** What stands after a backslash: a letter, up to three octal digits, the end of a line (nothing), or itself. */
function readEscape(cursor: Cursor): readonly number[] {
  if (cursor.endOfLine()) return [];
  const byte = cursor.peek();
  expectOfFile(byte !== undefined, 'a string without an end');
  if (byte < 0x30 || byte > 0x37) {
    cursor.position += 1;
    return [ESCAPES[String.fromCharCode(byte)] ?? byte];
  }
  let value = 0;
  for (let digits = 0; digits < 3; digits += 1) {
    const digit = cursor.peek();
    if (digit === undefined || digit < 0x30 || digit > 0x37) break;
    value = value * 8 + digit - 0x30;
    cursor.position += 1;
  }
  return [value & 0xff];
}

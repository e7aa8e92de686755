import { hexDigit, isDigit, isRegular } from './characters';
import type { Cursor } from './cursor';
import { refTo, type PdfArray, type PdfDict, type PdfName, type PdfValue, type Span } from './objects';
import { expectOfFile } from './pdf-fault';
import { readHexString, readLiteralString } from './read-string';

/** Deeper than anything real, and shallow enough for the stack. */
const DEEPEST = 48;

/**
 * Reads the value that begins here, after white space. A stream is read as its dictionary: what follows belongs
 * to the object around it. A name that stands twice in one dictionary is refused, because readers differ in
 * which one they take, and that is how one file shows two faces.
 */
export function readValue(cursor: Cursor, depth = 0): PdfValue {
  expectOfFile(depth < DEEPEST, 'values nested too deep');
  cursor.skipWhite();
  if (cursor.isAt('<<')) return readDict(cursor, depth);
  if (cursor.isAt('<')) return readHexString(cursor);
  if (cursor.isAt('(')) return readLiteralString(cursor);
  if (cursor.isAt('[')) return readArray(cursor, depth);
  if (cursor.isAt('/')) return readName(cursor);
  if (isDigit(cursor.peek())) return readReference(cursor) ?? readNumber(cursor);
  return readKeyword(cursor);
}

function readKeyword(cursor: Cursor): PdfValue {
  const first = cursor.peek();
  if (first === 0x2b || first === 0x2d || first === 0x2e) return readNumber(cursor);
  const at = cursor.position;
  const word = cursor.word();
  expectOfFile(word === 'true' || word === 'false' || word === 'null', `no value at ${at}`);
  return word === 'null' ? null : word === 'true';
}

function readNumber(cursor: Cursor): number {
  const at = cursor.position;
  const word = cursor.word();
  expectOfFile(/^[+-]?(\d+\.?\d*|\.\d+)$/.test(word), `no number at ${at}`);
  return Number(word);
}

/** `12 0 R`, or undefined, and not moved, where something else stands. */
function readReference(cursor: Cursor): PdfValue | undefined {
  const from = cursor.position;
  const text = String.fromCharCode(...cursor.bytes.subarray(from, Math.min(from + 20, cursor.end)));
  const found = /^(\d{1,8}) (\d{1,5}) R/.exec(text);
  if (found === null || isRegular(cursor.peek(found[0].length))) return undefined;
  cursor.position += found[0].length;
  return refTo(Number(found[1]), Number(found[2]));
}

function readName(cursor: Cursor): PdfName {
  cursor.take('/');
  let name = '';
  while (isRegular(cursor.peek())) {
    const high = cursor.isAt('#') ? hexDigit(cursor.peek(1)) : undefined;
    const low = hexDigit(cursor.peek(2));
    const escaped = high !== undefined && low !== undefined;
    name += String.fromCharCode(escaped ? high * 16 + low : cursor.peek() ?? 0);
    cursor.position += escaped ? 3 : 1;
    expectOfFile(name.length <= 127, 'a name too long');
  }
  return { kind: 'name', name };
}

function readArray(cursor: Cursor, depth: number): PdfArray {
  cursor.take('[');
  const items: PdfValue[] = [];
  for (cursor.skipWhite(); !cursor.isAt(']'); cursor.skipWhite()) items.push(readValue(cursor, depth + 1));
  cursor.take(']');
  return { kind: 'array', items };
}

function readDict(cursor: Cursor, depth: number): PdfDict {
  cursor.take('<<');
  const entries = new Map<string, PdfValue>();
  const spans = new Map<string, Span>();
  for (cursor.skipWhite(); !cursor.isAt('>>'); cursor.skipWhite()) {
    const { name } = readName(cursor);
    expectOfFile(!entries.has(name), `/${name} twice in one dictionary`);
    cursor.skipWhite();
    const start = cursor.position;
    entries.set(name, readValue(cursor, depth + 1));
    spans.set(name, { start, end: cursor.position });
  }
  cursor.take('>>');
  return { kind: 'dict', entries, spans };
}

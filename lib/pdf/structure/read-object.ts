import { Cursor } from './cursor';
import { isA, refTo, type IndirectObject, type PdfDict, type PdfRef } from './objects';
import { expectOfFile } from './pdf-fault';
import { readValue } from './read-value';

/**
 * Reads the object that begins at an offset: `12 0 obj … endobj`, with its stream if it has one.
 * @param lengthOf the length of a stream that stands in an object of its own
 */
export function readIndirectObject(bytes: Uint8Array, offset: number, end: number, lengthOf: (ref: PdfRef) => number): IndirectObject {
  const cursor = new Cursor(bytes, offset, end);
  const number = cursor.wholeNumber();
  cursor.take(' ');
  const generation = cursor.wholeNumber();
  cursor.take(' obj');
  const value = readValue(cursor);
  cursor.skipWhite();
  const data = cursor.isAt('stream') && isA(value, 'dict') ? readStreamData(cursor, value, lengthOf) : undefined;
  cursor.skipWhite();
  cursor.take('endobj');
  const whole = data !== undefined && isA(value, 'dict') ? { kind: 'stream' as const, dict: value, data } : value;
  return { ref: refTo(number, generation), value: whole, start: offset, end: cursor.position };
}

function readStreamData(cursor: Cursor, dict: PdfDict, lengthOf: (ref: PdfRef) => number): Uint8Array {
  cursor.take('stream');
  expectOfFile(cursor.endOfLine(), 'a stream that does not begin on a line of its own');
  const given = dict.entries.get('Length');
  const length = isA(given, 'ref') ? lengthOf(given) : given;
  expectOfFile(typeof length === 'number' && Number.isInteger(length) && length >= 0 && cursor.position + length <= cursor.end, 'a stream with a wrong length');
  const data = cursor.bytes.subarray(cursor.position, cursor.position + length);
  cursor.position += length;
  cursor.skipWhite();
  cursor.take('endstream');
  return data;
}

import { latin1Bytes } from './characters';
import type { PdfString } from './objects';

/** Text of any script: UTF-16 with its mark, in hexadecimal (ISO 32000-2, 7.9.2.2). */
export function textString(text: string): PdfString {
  const bytes = new Uint8Array(2 + text.length * 2);
  bytes.set([0xfe, 0xff]);
  for (let index = 0; index < text.length; index += 1) {
    const unit = text.charCodeAt(index);
    bytes.set([unit >> 8, unit & 0xff], 2 + index * 2);
  }
  return { kind: 'string', bytes, form: 'hex' };
}

/** ASCII as it stands. */
export function plainString(text: string): PdfString {
  return { kind: 'string', bytes: latin1Bytes(text), form: 'literal' };
}

/** The text of a string: UTF-16 or UTF-8 by its mark, else one character a byte. */
export function decodeText({ bytes }: PdfString): string {
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes.subarray(2));
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return new TextDecoder().decode(bytes.subarray(3));
  return String.fromCharCode(...bytes.subarray(0, 4096));
}

/** A time as D:20261125164200Z, to the second (ISO 32000-2, 7.9.4). */
export function pdfDate(at: Date): PdfString {
  return plainString(`D:${at.toISOString().replaceAll(/[-:T]/g, '').slice(0, 14)}Z`);
}

/** The time of a date in the form that is written here, in UTC; undefined for any other. */
export function readPdfDate(text: string): Date | undefined {
  const found = /^D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)Z$/.exec(text);
  if (found === null) return undefined;
  const [, year, month, day, hour, minute, second] = found;
  const date = new Date(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`);
  return Number.isNaN(date.getTime()) ? undefined : date;
}

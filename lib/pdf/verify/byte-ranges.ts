import { latin1 } from '../structure/characters';
import { isA, type PdfString, type Span } from '../structure/objects';
import type { SignatureInFile } from '../structure/fields';

/** What a signature covers and where it stands. */
export interface Coverage {
  /** the digits with their brackets: the only bytes that are not covered */
  readonly gap: Span;
  readonly contents: PdfString;
}

/**
 * The coverage of a signature, if it is what it must be: from the first byte of the file to the last one of its
 * revision, without the value of /Contents and without anything else. Undefined for any other.
 */
export function coverageOf({ dict }: SignatureInFile, revisionEnd: number): Coverage | undefined {
  const contents = dict.entries.get('Contents');
  const gap = dict.spans?.get('Contents');
  const range = dict.entries.get('ByteRange');
  if (!isA(contents, 'string') || contents.form !== 'hex' || gap === undefined || !isA(range, 'array')) return undefined;
  const [from, before, after, length, ...more] = range.items;
  const exact = from === 0 && before === gap.start && after === gap.end && length === revisionEnd - gap.end && more.length === 0;
  return exact ? { gap, contents } : undefined;
}

/** Whether the digits stand as they are written here: lower case and nothing between them. No signature covers them. */
export function isWrittenPlainly(bytes: Uint8Array, { gap, contents }: Coverage): boolean {
  return latin1(bytes.subarray(gap.start, gap.end)) === `<${Buffer.from(contents.bytes).toString('hex')}>`;
}

/** The covered bytes, in one piece. */
export function coveredBytes(bytes: Uint8Array, { gap }: Coverage, revisionEnd: number): Uint8Array {
  return new Uint8Array(Buffer.concat([bytes.subarray(0, gap.start), bytes.subarray(gap.end, revisionEnd)]));
}

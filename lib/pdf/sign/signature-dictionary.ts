import { latin1, latin1Bytes } from '../structure/characters';
import { arrayOf, dictOf, nameOf, type PdfValue } from '../structure/objects';
import { pdfDate, textString } from '../structure/text';
import { joined, writeValue } from '../structure/write';

/** What stands beside a signature in the file, and is covered by it. */
export interface SignatureFacts {
  readonly name: string;
  readonly reason: string;
  readonly place?: string;
  /** what the computer's clock says: claimed, not proved */
  readonly at: Date;
  /** the first signature also says what may be added after it */
  readonly first: boolean;
}

/** Room for a signature with its certificates and a time stamp: they take two to seven thousand bytes. */
export const CONTENTS_BYTES = 8192;
const RANGE_WIDTH = 44;

/** The dictionary with room for what is known only when the file around it is whole. */
export interface SignatureTemplate {
  readonly body: Uint8Array;
  /** where the list of byte ranges begins in it, and how long it is */
  readonly range: { readonly at: number; readonly length: number };
  /** where the digits of the signature begin and end in it, with their brackets */
  readonly gap: { readonly start: number; readonly end: number };
}

/** A signature dictionary (ISO 32000-2, 12.8.1) for PAdES (ETSI EN 319 142-1). */
export function signatureTemplate(facts: SignatureFacts): SignatureTemplate {
  const before = `<</Type /Sig /Filter /Adobe.PPKLite /SubFilter /ETSI.CAdES.detached\n/ByteRange `;
  const between = '\n/Contents ';
  const rest = dictOf({
    M: pdfDate(facts.at), Name: textString(facts.name), Reason: textString(facts.reason),
    ...(facts.place === undefined ? {} : { Location: textString(facts.place) }),
    ...(facts.first ? { Reference: arrayOf([onlySignaturesAfter]) } : {}),
  });
  const digits = `<${'0'.repeat(CONTENTS_BYTES * 2)}>`;
  const start = before.length + RANGE_WIDTH + between.length;
  const tail = latin1(writeValue(rest)).slice('<<'.length);
  return {
    body: joined([before, ' '.repeat(RANGE_WIDTH), between, digits, '\n', tail].map(latin1Bytes)),
    range: { at: before.length, length: RANGE_WIDTH },
    gap: { start, end: start + digits.length },
  };
}

/** A list of byte ranges of a fixed length. */
export function byteRange(gapStart: number, gapEnd: number, fileEnd: number): Uint8Array {
  return latin1Bytes(`[0 ${gapStart} ${gapEnd} ${fileEnd - gapEnd}]`.padEnd(RANGE_WIDTH));
}

/** DocMDP with P 2: forms may be filled in and signed, nothing else (ISO 32000-2, 12.8.2.2). */
const onlySignaturesAfter: PdfValue = dictOf({
  Type: nameOf('SigRef'), TransformMethod: nameOf('DocMDP'),
  TransformParams: dictOf({ Type: nameOf('TransformParams'), P: 2, V: nameOf('1.2') }),
});

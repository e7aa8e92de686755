import { MARGIN, textWidth, type PaperSize } from './paper-size';

/** Whoever signs, by the names of the fields. */
export type SigningRole = 'Preparer' | 'Officer';

/** Size of the place for a signature, points. */
export interface SignatureBoxSize { readonly width: number; readonly height: number }

const GAP = 14;
/** Of the box a signature is drawn into, points. */
export const BOX_HEIGHT = 106;
const ABOVE_FOOTER = 8;
/** Above the box stands whose it is, points. */
export const LABEL_HEIGHT = 26;
/** Height that the places take at the foot of a page, points. */
export const SIGNATURES_HEIGHT = BOX_HEIGHT + LABEL_HEIGHT + ABOVE_FOOTER;

export function signatureBoxSize(paper: PaperSize): SignatureBoxSize {
  return { width: (textWidth(paper) - GAP) / 2, height: BOX_HEIGHT };
}

/** Where the place for a signature is on its page: left, bottom, right, top in points from the lower left corner. */
export function signatureRectangle(paper: PaperSize, role: SigningRole): readonly [number, number, number, number] {
  const { width, height } = signatureBoxSize(paper);
  const left = MARGIN.left + (role === 'Preparer' ? 0 : width + GAP);
  const bottom = MARGIN.bottom + ABOVE_FOOTER;
  return [left, bottom, left + width, bottom + height];
}

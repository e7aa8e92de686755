/** The two people who sign; an incident has the officer alone. The names stand in the file. */
export type SignerRole = 'Preparer' | 'Officer';

/** Left, bottom, right and top in points from the lower left corner of the page. */
export type Rectangle = readonly [left: number, bottom: number, right: number, top: number];

export interface SignatureField {
  readonly role: SignerRole;
  /** counted from 0 */
  readonly page: number;
  readonly rectangle: Rectangle;
  /** a PDF of one page, as large as the field: what stands there until somebody signs */
  readonly appearance: Uint8Array;
}

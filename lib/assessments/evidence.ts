/** A photo as it is kept: drawn anew, so that nothing of the camera, the place or the time is left in it. */
export interface EvidenceToKeep {
  readonly questionId: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly mimeType: string;
  readonly sha256: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A photo beside an answer, without its bytes. */
export interface EvidenceListed { readonly id: string; readonly questionId: string; readonly byName: string; readonly at: Date }

/** Enough to show a table from all sides, few enough to be looked at. */
const MOST_PHOTOS = 6;

/** Why photos cannot be added to those of a question, in words; null when they can. */
export function tooManyPhotos(there: number, added: number): string | null {
  return there + added > MOST_PHOTOS ? `An answer has at most ${MOST_PHOTOS} photos` : null;
}

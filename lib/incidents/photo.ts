/** A picture that was made anew out of what was sent: nothing of the camera, the place or the time is left in it. */
export interface PhotoToKeep {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly mimeType: string;
  readonly sha256: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Photos of one incident; more would be a film. */
export const MOST_PHOTOS = 12;
/** Photos of one form: of the largest size they fit into what a form may bring (next.config.ts). */
export const MOST_PHOTOS_AT_ONCE = 3;

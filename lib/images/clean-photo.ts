import { createHash } from 'node:crypto';
import { fileTypeFromBuffer } from 'file-type';
import sharp from 'sharp';

/** A picture made anew: nothing of the camera, the place or the time is left in it. */
export interface CleanPhoto {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly mimeType: 'image/jpeg';
  readonly sha256: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

export type PhotoCleaned = { readonly ok: true; readonly photo: CleanPhoto } | { readonly ok: false; readonly reason: string };

/** What a telephone's camera sends at its best; more is no photo. */
export const LARGEST_PHOTO_BYTES = 8 * 1024 * 1024;
/** Such a picture has 110 million points at most; one that claims more is made to fill the memory. */
const MOST_POINTS = 110_000_000;
/** Enough to see a dent on a pack, in both directions. */
const LONGEST_SIDE_PX = 2000;
const QUALITY = 80;

/** By what the bytes are, not by what the file is called. */
const READABLE = ['image/jpeg', 'image/png', 'image/webp'];

/**
 * Reads a photo and draws it anew as a JPEG: turned upright, no larger than it need be, on white where it was clear.
 * Everything else in the file (position, time, camera, preview, colour profile, comments) is left behind.
 * @returns the new picture, or in words why the file is none that can be kept
 */
export async function cleanPhoto(bytes: Uint8Array): Promise<PhotoCleaned> {
  if (bytes.byteLength > LARGEST_PHOTO_BYTES) return { ok: false, reason: `it is larger than ${LARGEST_PHOTO_BYTES / 1024 / 1024} MB` };
  const type = await fileTypeFromBuffer(bytes);
  if (type === undefined || !READABLE.includes(type.mime)) return { ok: false, reason: 'it is no JPEG, PNG or WebP picture' };
  try {
    return { ok: true, photo: await drawnAnew(bytes) };
  } catch (cause) {
    // The file is somebody's, not ours: what is wrong with it is an answer, not a fault of the program.
    return { ok: false, reason: `it cannot be read as a picture (${cause instanceof Error ? cause.message : String(cause)})` };
  }
}

async function drawnAnew(bytes: Uint8Array): Promise<CleanPhoto> {
  const { data, info } = await sharp(bytes, { limitInputPixels: MOST_POINTS, failOn: 'error' })
    .autoOrient()
    .resize({ width: LONGEST_SIDE_PX, height: LONGEST_SIDE_PX, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .jpeg({ quality: QUALITY })
    .toBuffer({ resolveWithObject: true });
  return { bytes: new Uint8Array(data), mimeType: 'image/jpeg', sha256: createHash('sha256').update(data).digest('hex'), widthPx: info.width, heightPx: info.height };
}

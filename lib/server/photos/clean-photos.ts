import 'server-only';
import { cleanPhoto, type CleanPhoto } from '@/lib/images/clean-photo';

export interface CleanedPhotos {
  readonly kept: readonly CleanPhoto[];
  /** one sentence for each file that is none that can be kept */
  readonly refused: readonly string[];
}

/** The files a form field holds, none, one or several. */
export function filesOf(value: unknown): readonly File[] {
  return [value].flat().filter((one) => one instanceof File);
}

/** Draws every photo anew, one after the other, so that one form does not take all of the memory. */
export async function cleanPhotos(files: readonly File[]): Promise<CleanedPhotos> {
  const kept: CleanPhoto[] = [];
  const refused: string[] = [];
  for (const file of files) {
    const cleaned = await cleanPhoto(new Uint8Array(await file.arrayBuffer()));
    if (cleaned.ok) kept.push(cleaned.photo);
    else refused.push(`${file.name}: ${cleaned.reason}`);
  }
  return { kept, refused };
}

import { openDocument, type PdfDocument } from '../structure/document';
import { readFile } from '../structure/read-file';

/**
 * Opens a file that this program wrote, to add to it. Anything wrong with it is a fault of ours, or of the disk,
 * and is thrown: such a file is not to be signed.
 */
export function openForSigning(pdf: Uint8Array): PdfDocument {
  const file = readFile(pdf);
  if (file.trailing !== 0) throw new Error('bytes after the end of the file that is to be signed');
  return openDocument(file);
}

/** Gives out numbers that no object of the file has. */
export function numbersAfter(document: PdfDocument): () => number {
  let next = Number(document.trailer.entries.get('Size'));
  if (!Number.isInteger(next) || next < 1) throw new Error('a trailer without /Size');
  return () => next++;
}

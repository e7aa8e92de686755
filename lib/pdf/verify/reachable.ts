import type { PdfDocument } from '../structure/document';
import { isA, type PdfValue } from '../structure/objects';

/** Numbers of all objects that some values lead to. Ends, since each object is looked at once. */
export function reachableFrom(document: PdfDocument, values: readonly (PdfValue | undefined)[]): ReadonlySet<number> {
  const found = new Set<number>();
  const waiting: (PdfValue | undefined)[] = [...values];
  while (waiting.length > 0) {
    const value = waiting.pop();
    if (isA(value, 'ref') && !found.has(value.number)) {
      found.add(value.number);
      waiting.push(document.object(value.number)?.value);
    }
    waiting.push(...partsOf(value));
  }
  return found;
}

function partsOf(value: PdfValue | undefined): readonly PdfValue[] {
  if (isA(value, 'array')) return value.items;
  if (isA(value, 'dict')) return [...value.entries.values()];
  if (isA(value, 'stream')) return [...value.dict.entries.values()];
  return [];
}

import type { PaperModels, PaperName } from '../documents/papers';

/** A paper to be set. */
export interface RenderTask<Name extends PaperName = PaperName> {
  readonly name: Name;
  readonly model: PaperModels[Name];
}

/** What the worker answers: pages as they are set, then one of the other two. */
export type RenderAnswer =
  | { readonly kind: 'page'; readonly pageNumber: number }
  | { readonly kind: 'done'; readonly pdf: Uint8Array }
  | { readonly kind: 'failed'; readonly message: string };

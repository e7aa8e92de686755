import type { ReactElement } from 'react';
import type { Paper } from '@/lib/papers/paper';
import { PaperOfBlocks } from './paper-of-blocks';
import { SignatureAppearance, type SignatureAppearanceModel } from './signature-appearance';
import { SignaturePlace, type SignaturePlaceModel } from './signature-place';

/** Every paper by its name, with the plain model that it is made from: only data goes to the worker that sets it. */
export interface PaperModels {
  readonly paper: Paper;
  readonly 'signature-appearance': SignatureAppearanceModel;
  readonly 'signature-place': SignaturePlaceModel;
}

export type PaperName = keyof PaperModels;

export const PAPERS: { readonly [Name in PaperName]: (model: PaperModels[Name]) => ReactElement } = {
  paper: (model) => <PaperOfBlocks paper={model} />,
  'signature-appearance': (model) => <SignatureAppearance model={model} />,
  'signature-place': (model) => <SignaturePlace model={model} />,
};

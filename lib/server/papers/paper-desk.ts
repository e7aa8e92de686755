import 'server-only';
import type { Paper } from '@/lib/papers/paper';
import { addSignatureFields } from '@/lib/pdf/sign/add-signature-fields';
import { signField } from '@/lib/pdf/sign/sign-field';
import type { SignerRole } from '@/lib/pdf/sign/signature-field';
import { signatureBoxSize, signatureRectangle } from '@/lib/pdf/render/signature-geometry';
import { createPaperRenderer, type PaperRenderer, type RenderOptions } from '@/lib/pdf/worker/paper-renderer';
import { type Make, madeOnce } from './made-once';
import type { ReadySigner } from './signing-keys';

let desk: PaperRenderer | undefined;
/** One thread for all papers of this process; the next waits for the one before. */
const renderer = (): PaperRenderer => (desk ??= createPaperRenderer({ root: process.cwd() }));

/** Makes the PDF of a paper, with empty places for its signatures on the cover; the same paper asked for again is not made again. */
export const makePaper: Make = madeOnce(withPlaces);

async function withPlaces(paper: Paper, options: RenderOptions): Promise<Uint8Array> {
  const pdf = await renderer().render('paper', paper, options);
  if (paper.signatures.length === 0) return pdf;
  const size = signatureBoxSize(paper.format);
  const empty = await Promise.all(paper.signatures.map((place) => renderer().render('signature-appearance', {
    ...size, name: '', post: `${place.title}: ${place.name}`, reason: 'not signed', when: '', certificate: '', language: paper.language, signedAt: new Date(paper.madeAt),
  }, { signal: options.signal })));
  return addSignatureFields(pdf, paper.signatures.map((place, index) => ({ role: place.field, page: 0, rectangle: signatureRectangle(paper.format, place.field), appearance: empty[index] ?? new Uint8Array() })));
}

export interface SignatureWords { readonly name: string; readonly post: string; readonly reason: string; readonly place: string; readonly at: Date; readonly when: string; readonly language: string; readonly format: Paper['format'] }

/** Signs a paper in one of its places. */
export async function signPaper(pdf: Uint8Array, role: SignerRole, words: SignatureWords, { signer, fingerprint }: ReadySigner): Promise<Uint8Array> {
  const appearance = await renderer().render('signature-appearance', {
    ...signatureBoxSize(words.format), name: words.name, post: words.post, reason: words.reason, when: words.when, certificate: `certificate ${fingerprint.slice(0, 16)}`, language: words.language, signedAt: words.at,
  });
  return signField(pdf, { role, name: words.name, reason: words.reason, place: words.place, at: words.at, appearance }, signer);
}

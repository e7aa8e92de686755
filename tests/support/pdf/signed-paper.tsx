import { SignatureAppearance } from '@/lib/pdf/documents/signature-appearance';
import { SignaturePlace } from '@/lib/pdf/documents/signature-place';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { signatureBoxSize, signatureRectangle } from '@/lib/pdf/render/signature-geometry';
import { addSignatureFields } from '@/lib/pdf/sign/add-signature-fields';
import type { SignerRole } from '@/lib/pdf/sign/signature-field';
import { signField } from '@/lib/pdf/sign/sign-field';
import type { Signer } from '@/lib/pdf/sign/signer';
import { SAMPLE_MADE_AT } from './sample-paper';

export const SIGNED_AT = { Preparer: new Date('2026-11-25T16:05:00Z'), Officer: new Date('2026-11-26T08:41:00Z') } as const;
const POSTS = { Preparer: 'Teacher, Tern Lane School', Officer: 'Safety officer, Tern Lane School' } as const;
const REASONS = { Preparer: 'Prepared and seen on site', Officer: 'Checked, and in force until 31 July 2027' } as const;

/** An A4 paper with both places for signatures, both empty. */
export async function withFields(pdf: Uint8Array): Promise<Uint8Array> {
  const appearance = await emptyPlace();
  const roles = ['Preparer', 'Officer'] as const;
  return addSignatureFields(pdf, roles.map((role) => ({ role, page: 0, rectangle: signatureRectangle('A4', role), appearance })));
}

/** What stands in a place until it is signed. */
export function emptyPlace(): Promise<Uint8Array> {
  return renderPaper(<SignaturePlace model={{ ...signatureBoxSize('A4'), words: 'not signed', language: 'en-GB', createdAt: SAMPLE_MADE_AT }} />);
}

/** Signs as one of the two. */
export async function signAs(pdf: Uint8Array, role: SignerRole, name: string, signer: Signer, at: Date = SIGNED_AT[role]): Promise<Uint8Array> {
  const model = {
    ...signatureBoxSize('A4'), name, post: POSTS[role], reason: REASONS[role],
    when: `${at.toISOString().slice(0, 16).replace('T', ', ')} UTC by the clock of the computer used`,
    certificate: 'Certificate 9c41 07be 5d20 e83a', language: 'en-GB', signedAt: at,
  };
  const appearance = await renderPaper(<SignatureAppearance model={model} />);
  return signField(pdf, { role, name, reason: REASONS[role], place: 'Tern Lane School', at, appearance }, signer);
}

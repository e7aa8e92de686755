import { latin1Bytes } from '../structure/characters';
import type { PdfDocument } from '../structure/document';
import { signatureFields } from '../structure/fields';
import { catalogOf } from '../structure/get';
import { dictOf, refTo, withEntries, type PdfRef } from '../structure/objects';
import { appendRevision, type AddedObject } from './append-revision';
import { expectToFit, importPage } from './import-page';
import { numbersAfter, openForSigning } from './open-for-signing';
import { byteRange, CONTENTS_BYTES, signatureTemplate, type SignatureFacts, type SignatureTemplate } from './signature-dictionary';
import type { SignerRole } from './signature-field';
import { detachedSignature, type Signer } from './signer';

export interface SignRequest extends Omit<SignatureFacts, 'first'> {
  readonly role: SignerRole;
  /** a PDF of one page, as large as the field: what stands on the paper */
  readonly appearance: Uint8Array;
}

/**
 * Fills in one signature field: PAdES in an addition to the file, over everything before and in it except the
 * signature itself. The first signature allows further signatures in fields that are there and nothing else.
 * Everything but the signature follows from the input.
 * @throws when there is no such field, or it is signed: a fault of the caller, nothing is signed
 */
export async function signField(pdf: Uint8Array, { role, appearance, ...facts }: SignRequest, signer: Signer): Promise<Uint8Array> {
  const document = openForSigning(pdf);
  const fields = signatureFields(document);
  const field = fields.find(({ name }) => name === role);
  if (field === undefined) throw new Error(`there is no field ${role}`);
  if (field.signature !== undefined) throw new Error(`${role} has signed`);
  const first = fields.every(({ signature }) => signature === undefined);
  const template = signatureTemplate({ ...facts, first });
  const next = numbersAfter(document);
  const signature = refTo(next());
  const drawn = importPage(appearance, next);
  expectToFit(drawn, field.widget.entries.get('Rect'));
  const widget = withEntries(field.widget, { AP: dictOf({ N: drawn.form }), V: signature });
  const appended = appendRevision(document, [
    { ref: signature, body: template.body },
    { ref: field.ref, body: widget },
    ...drawn.objects,
    ...(first ? [allowances(document, signature)] : []),
  ]);
  return completed(appended.bytes, appended.bodyOffset(signature), template, signer);
}

/** The catalog, saying which signature allows what. */
function allowances(document: PdfDocument, signature: PdfRef): AddedObject {
  const catalog = catalogOf(document);
  return { ref: catalog.ref, body: withEntries(catalog.dict, { Perms: dictOf({ DocMDP: signature }) }) };
}

/** Writes the byte ranges and then the signature over them into the room that was left. */
async function completed(bytes: Uint8Array, at: number, { range, gap }: SignatureTemplate, signer: Signer): Promise<Uint8Array> {
  const whole = Uint8Array.from(bytes);
  const start = at + gap.start;
  const end = at + gap.end;
  whole.set(byteRange(start, end, whole.length), at + range.at);
  const der = await detachedSignature([whole.subarray(0, start), whole.subarray(end)], signer);
  if (der.length > CONTENTS_BYTES) throw new Error(`a signature of ${der.length} bytes does not fit`);
  whole.set(latin1Bytes(Buffer.from(der).toString('hex')), start + 1);
  return whole;
}

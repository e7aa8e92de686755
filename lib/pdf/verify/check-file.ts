import { createHash } from 'node:crypto';
import { openDocument, type PdfDocument } from '../structure/document';
import { signatureFields } from '../structure/fields';
import { PdfFault } from '../structure/pdf-fault';
import { LARGEST_FILE, type PdfFile, readFile } from '../structure/read-file';
import { onlySigns } from './check-additions';
import { checkSignature } from './check-signature';
import type { FileCheck, Finding, SignatureReport, SignedCheck } from './file-check';

export interface CheckOptions {
  /** certificates that this school has issued with, DER, old ones too */
  readonly authorities: readonly Uint8Array[];
  /** bytes; larger files are not looked at */
  readonly largest?: number;
}

/**
 * Checks a file that anybody may have handed in: whether it is a PDF, who signed it, and whether it still is what
 * they signed. Every signature of the form is looked at, each must hold, nothing but signing may have happened
 * between two of them, and the last must cover the file to its end. Never throws for what stands in the file.
 */
export function checkFile(bytes: Uint8Array, { authorities, largest = LARGEST_FILE }: CheckOptions): FileCheck {
  const fingerprint = bytes.length > largest ? '' : sha256(bytes);
  try {
    const document = openDocument(readFile(bytes, largest));
    const check = checkDocument(document, authorities);
    return check === undefined ? { state: 'unsigned', fingerprint } : { ...check, fingerprint };
  } catch (error) {
    if (error instanceof PdfFault) return { state: 'unreadable', fault: error.fault, fingerprint };
    throw error;
  }
}

function checkDocument(document: PdfDocument, authorities: readonly Uint8Array[]): Omit<SignedCheck, 'fingerprint'> | undefined {
  const fields = signatureFields(document);
  const signatures = fields
    .flatMap((field) => (field.signature === undefined ? [] : [checkSignature(document, field, field.signature, authorities)]))
    .sort((a, b) => a.coversTo - b.coversTo);
  if (signatures.length === 0) return undefined;
  const findings = [...additionsBetween(document, signatures), ...uncovered(document, signatures)];
  return {
    state: stateOf(signatures, findings),
    signatures,
    unsignedRoles: fields.filter(({ signature }) => signature === undefined).map(({ name }) => name),
    findings,
  };
}

/** A file that no one of this school signed is none of ours, whatever else is true of it. */
function stateOf(signatures: readonly SignatureReport[], findings: readonly Finding[]): SignedCheck['state'] {
  if (signatures.every(({ issuedHere }) => !issuedHere)) return 'foreign';
  if (findings.length > 0 || signatures.some((signature) => signature.findings.length > 0)) return 'changed';
  return signatures.every(({ issuedHere }) => issuedHere) ? 'unchanged' : 'foreign';
}

/** Revisions after the first signature that do more than sign. */
function additionsBetween({ file }: PdfDocument, [first]: readonly SignatureReport[]): readonly Finding[] {
  return file.revisions.flatMap((revision, index): readonly Finding[] => {
    const later = first !== undefined && index >= first.revision;
    return later && !onlySigns(file, index) ? [{ kind: 'not-permitted', start: revision.start, end: revision.end }] : [];
  });
}

/** What stands after the end of the last signature. */
function uncovered({ file }: PdfDocument, signatures: readonly SignatureReport[]): readonly Finding[] {
  const end = signatures.at(-1)?.coversTo ?? 0;
  if (end === file.bytes.length) return [];
  return [{ kind: isCutOff(file) ? 'cut-off' : 'after-last-signature', start: end, end: file.bytes.length }];
}

/** What was begun after the last whole revision and has no end: the rest of it did not come along. */
function isCutOff({ bytes, trailing }: PdfFile): boolean {
  return /^\s*\d+ \d+ obj\b/.test(Buffer.from(bytes.subarray(bytes.length - trailing)).subarray(0, 40).toString('latin1'));
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

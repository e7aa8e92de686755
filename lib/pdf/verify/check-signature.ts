import { createHash } from 'node:crypto';
import { readCertificateFacts, type CertificateFacts } from '../certificates/certificate-facts';
import type { PdfDocument } from '../structure/document';
import type { SignatureFieldInFile, SignatureInFile } from '../structure/fields';
import { isA, isNamed, type PdfDict } from '../structure/objects';
import { decodeText, readPdfDate } from '../structure/text';
import { coverageOf, coveredBytes, isWrittenPlainly } from './byte-ranges';
import { checkContainer, type ContainerCheck } from './check-container';
import type { Finding, FindingKind, SignatureReport } from './file-check';

/** Checks one signature against the bytes it covers. @param document the file as it is now */
export function checkSignature(document: PdfDocument, field: SignatureFieldInFile, signature: SignatureInFile, authorities: readonly Uint8Array[]): SignatureReport {
  const { file } = document;
  const index = document.originOf(signature.ref.number) ?? 0;
  const end = file.revisions[index]?.end ?? file.bytes.length;
  const coverage = coverageOf(signature, end);
  const container: ContainerCheck = coverage === undefined
    ? { certificate: undefined, issuedHere: false, stampedAt: undefined, fault: 'byte-range' }
    : checkContainer(coverage.contents.bytes, coveredBytes(file.bytes, coverage, end), authorities);
  const certificate = container.certificate === undefined ? undefined : readCertificateFacts(container.certificate);
  const claimedAt = readPdfDate(textOf(document, signature.dict, 'M'));
  const plain = coverage !== undefined && isWrittenPlainly(file.bytes, coverage) && isNamed(document.resolve(signature.dict.entries.get('SubFilter')), 'ETSI.CAdES.detached');
  const fault = container.fault ?? (container.issuedHere ? faultOfOwn(plain, certificate, claimedAt) : undefined);
  return {
    role: field.name,
    holder: certificate?.holder ?? '',
    certificate,
    issuedHere: container.issuedHere,
    reason: textOf(document, signature.dict, 'Reason'),
    claimedAt,
    stampedAt: container.stampedAt,
    revision: index + 1,
    coversTo: end,
    fingerprint: createHash('sha256').update(file.bytes.subarray(0, end)).digest('hex'),
    findings: fault === undefined ? [] : [findingOf(fault, signature, end)],
  };
}

/** What is asked of a signature of this school besides that it holds. */
function faultOfOwn(plain: boolean, certificate: CertificateFacts | undefined, claimedAt: Date | undefined): FindingKind | undefined {
  if (!plain) return 'container';
  const inForce = certificate !== undefined && claimedAt !== undefined && claimedAt >= certificate.from && claimedAt <= certificate.until;
  return inForce ? undefined : 'certificate-period';
}

/** A digest is about all that was signed, everything else about the signature. */
function findingOf(kind: FindingKind, signature: SignatureInFile, end: number): Finding {
  return kind === 'digest' ? { kind, start: 0, end } : { kind, start: signature.start, end: signature.end };
}

function textOf(document: PdfDocument, dict: PdfDict, name: string): string {
  const value = document.resolve(dict.entries.get(name));
  return isA(value, 'string') ? decodeText(value) : '';
}

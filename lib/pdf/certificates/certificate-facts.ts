import { createHash, X509Certificate } from 'node:crypto';
import type { Validity } from './validity';
import { x509 } from './x509';

/** What a certificate says of itself. */
export interface CertificateFacts extends Validity {
  /** common name of the holder; the whole name where there is none */
  readonly holder: string;
  readonly issuer: string;
  /** hexadecimal, lower case */
  readonly serial: string;
  /** SHA-256 over the certificate, hexadecimal: what two people compare to know that they hold the same */
  readonly fingerprint: string;
}

/** Reads a certificate. @param der one certificate; anything else throws */
export function certificateFacts(der: Uint8Array): CertificateFacts {
  const certificate = new x509.X509Certificate(Uint8Array.from(der));
  return {
    holder: commonName(certificate.subjectName) ?? certificate.subject,
    issuer: commonName(certificate.issuerName) ?? certificate.issuer,
    serial: certificate.serialNumber.toLowerCase(),
    from: certificate.notBefore,
    until: certificate.notAfter,
    fingerprint: createHash('sha256').update(der).digest('hex'),
  };
}

/** The same for a certificate that anybody may have made: undefined where it cannot be read. */
export function readCertificateFacts(der: Uint8Array): CertificateFacts | undefined {
  try {
    return certificateFacts(der);
  } catch {
    return undefined;
  }
}

function commonName(name: InstanceType<typeof x509.Name>): string | undefined {
  return name.getField('CN')[0];
}

/**
 * Whether a certificate is one for signing documents and was issued by the other: name, key identifier and
 * signature, and no right to issue further ones.
 */
export function isIssuedBy(der: Uint8Array, issuerDer: Uint8Array): boolean {
  const certificate = new X509Certificate(der);
  const issuer = new X509Certificate(issuerDer);
  return issuer.ca && !certificate.ca && certificate.checkIssued(issuer) && certificate.verify(issuer.publicKey) && maySign(der);
}

function maySign(der: Uint8Array): boolean {
  const usage = new x509.X509Certificate(Uint8Array.from(der)).getExtension(x509.KeyUsagesExtension);
  return usage !== null && (usage.usages & x509.KeyUsageFlags.digitalSignature) !== 0;
}

import { createHash, verify, X509Certificate, type KeyObject } from 'node:crypto';
import { issuerAndSerial } from './certificate-names';
import { octetsOf } from './der';
import { MESSAGE_DIGEST } from './oids';
import type { SignedData } from './read-signed-data';

/** Digests that a signature by any program may use, by their identifiers (RFC 5754). */
const DIGESTS: Readonly<Record<string, string>> = {
  '2.16.840.1.101.3.4.2.1': 'sha256',
  '2.16.840.1.101.3.4.2.2': 'sha384',
  '2.16.840.1.101.3.4.2.3': 'sha512',
};

export type SignerCheck =
  | { readonly state: 'holds'; readonly certificate: Uint8Array }
  /** the digest or the signature does not fit */
  | { readonly state: 'broken'; readonly certificate: Uint8Array | undefined }
  /** made in a way that is not checked here */
  | { readonly state: 'unknown'; readonly certificate: Uint8Array | undefined };

/** Whether a signature by anybody fits what was signed and the certificate inside it; not who that is. */
export function checkSigner({ certificates, signer }: SignedData, content: Uint8Array): SignerCheck {
  const certificate = certificates.find((candidate) => isNamedBy(candidate, signer.issuerAndSerial));
  const digest = DIGESTS[signer.digestAlgorithm];
  const claimed = octetsOf(signer.signedValue(MESSAGE_DIGEST));
  if (certificate === undefined || digest === undefined || claimed === undefined) return { state: 'unknown', certificate };
  if (!createHash(digest).update(content).digest().equals(claimed)) return { state: 'broken', certificate };
  const publicKey = readPublicKey(certificate);
  if (publicKey === undefined || (publicKey.asymmetricKeyType !== 'rsa' && publicKey.asymmetricKeyType !== 'ec')) return { state: 'unknown', certificate };
  return { state: verify(digest, signer.signedAttributes, publicKey, signer.signature) ? 'holds' : 'broken', certificate };
}

/** The key of a certificate; undefined for one that cannot be read, for which Node throws. */
export function readPublicKey(certificate: Uint8Array): KeyObject | undefined {
  try {
    return new X509Certificate(certificate).publicKey;
  } catch {
    return undefined;
  }
}

function isNamedBy(certificate: Uint8Array, signer: Uint8Array | undefined): boolean {
  const names = issuerAndSerial(certificate);
  return signer !== undefined && names !== undefined && Buffer.from(names).equals(signer);
}

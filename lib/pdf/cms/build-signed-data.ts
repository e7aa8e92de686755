import { createHash } from 'node:crypto';
import { certificateNames } from './certificate-names';
import { derOf, embedded, integer, octets, oid, sequence, setOf, tagged } from './der';
import { CONTENT_TYPE, DATA, ECDSA_WITH_SHA_256, MESSAGE_DIGEST, SHA_256, SIGNED_DATA, SIGNING_CERTIFICATE_V2, TIMESTAMP_TOKEN } from './oids';

export interface SignatureParts {
  /** of the person, DER */
  readonly certificate: Uint8Array;
  /** of the school, DER */
  readonly issuer: Uint8Array;
  /** SHA-256 over what is signed */
  readonly digest: Uint8Array;
}

/**
 * The attributes that are signed, in DER as SET OF: content type, digest and the certificate that was used, and
 * no time (ETSI EN 319 142-1, 6.3; RFC 5652, 5.4; RFC 5035). They stand in the order that DER asks for.
 */
export function signedAttributes({ certificate, digest }: SignatureParts): Uint8Array {
  return derOf(setOf(...attributes(certificate, digest)));
}

function attributes(certificate: Uint8Array, digest: Uint8Array) {
  return [
    sequence(oid(CONTENT_TYPE), setOf(oid(DATA))),
    sequence(oid(MESSAGE_DIGEST), setOf(octets(digest))),
    sequence(oid(SIGNING_CERTIFICATE_V2), setOf(signingCertificate(certificate))),
  ];
}

/** SHA-256 is the default of this attribute, and what is default is left out in DER. */
function signingCertificate(certificate: Uint8Array) {
  const { issuer, serial } = namesOf(certificate);
  const hash = createHash('sha256').update(certificate).digest();
  return sequence(sequence(sequence(octets(hash), sequence(sequence(tagged(4, embedded(issuer))), embedded(serial)))));
}

/**
 * A detached CMS signature (RFC 5652, 5.1) out of its parts, in DER. The same parts give the same bytes, which is
 * how the check finds anything altered in those places that no signature covers.
 * @param signature over signedAttributes(), as ECDSA gives it in DER
 * @param timestamp token of RFC 3161 over the signature, DER
 */
export function buildSignedData(parts: SignatureParts, signature: Uint8Array, timestamp?: Uint8Array): Uint8Array {
  const { issuer, serial } = namesOf(parts.certificate);
  const signer = sequence(
    integer(1),
    sequence(embedded(issuer), embedded(serial)),
    sequence(oid(SHA_256)),
    tagged(0, ...attributes(parts.certificate, parts.digest)),
    sequence(oid(ECDSA_WITH_SHA_256)),
    octets(signature),
    ...(timestamp === undefined ? [] : [tagged(1, sequence(oid(TIMESTAMP_TOKEN), setOf(embedded(timestamp))))]),
  );
  const signedData = sequence(
    integer(1),
    setOf(sequence(oid(SHA_256))),
    sequence(oid(DATA)),
    tagged(0, embedded(parts.certificate), embedded(parts.issuer)),
    setOf(signer),
  );
  return derOf(sequence(oid(SIGNED_DATA), tagged(0, signedData)));
}

function namesOf(certificate: Uint8Array) {
  const names = certificateNames(certificate);
  if (names === undefined) throw new Error('not a certificate');
  return names;
}

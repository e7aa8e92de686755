import { AUTHORITY_YEARS, validityFrom } from './validity';
import { distinguishedName, exportKey, KEY_ALGORITHM, newKeys, x509 } from './x509';

/** A certificate and the key that belongs to it. The key is in the clear: seal it before it is kept. */
export interface KeyedCertificate {
  /** DER */
  readonly certificate: Uint8Array;
  /** PKCS #8 */
  readonly key: Uint8Array;
}

export interface AuthorityRequest {
  readonly schoolName: string;
  readonly now: Date;
  /** from newSerial() */
  readonly serial: string;
}

/**
 * Makes the school's own issuing certificate (RFC 5280): ECDSA P-256, ten years, may issue certificates for people
 * and none that issue further. It vouches for "this person, in this installation" and for nothing else.
 */
export async function createAuthority({ schoolName, now, serial }: AuthorityRequest): Promise<KeyedCertificate> {
  const keys = await newKeys();
  const { from, until } = validityFrom(now, AUTHORITY_YEARS);
  const certificate = await x509.X509CertificateGenerator.createSelfSigned({
    serialNumber: serial,
    name: distinguishedName(`${schoolName}: signing`, schoolName),
    notBefore: from,
    notAfter: until,
    signingAlgorithm: KEY_ALGORITHM,
    keys,
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign, true),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: new Uint8Array(certificate.rawData), key: await exportKey(keys.privateKey) };
}

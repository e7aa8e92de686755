import type { KeyedCertificate } from './authority';
import { PERSON_YEARS, validityFrom, validityState } from './validity';
import { distinguishedName, exportKey, importKey, KEY_ALGORITHM, newKeys, x509 } from './x509';

/** RFC 9336; with the one below, because checkers in common use refuse it alone. */
const DOCUMENT_SIGNING = '1.3.6.1.5.5.7.3.36';
const EMAIL_PROTECTION = '1.3.6.1.5.5.7.3.4';

export interface PersonRequest {
  readonly authority: KeyedCertificate;
  /** as it is to stand beside the signature, in any script */
  readonly name: string;
  readonly schoolName: string;
  /** readable by everyone who holds a signed file: leave it out where that is not wanted */
  readonly email?: string;
  readonly now: Date;
  /** from newSerial() */
  readonly serial: string;
}

/**
 * Issues a certificate for one person, with a new key: two years, for signing documents, no further certificates.
 * Made anew when the old one ends soon, or when its key can no longer be opened; what was signed with the old one
 * stays as good as it was.
 * @throws when the school's certificate is not in force: then a new one is to be made first
 */
export async function issuePersonCertificate({ authority, name, schoolName, email, now, serial }: PersonRequest): Promise<KeyedCertificate> {
  const issuer = new x509.X509Certificate(Uint8Array.from(authority.certificate));
  const state = validityState({ from: issuer.notBefore, until: issuer.notAfter }, now);
  if (state === 'not-yet' || state === 'ended') throw new Error('the school’s certificate is not in force');
  const keys = await newKeys();
  const { from, until } = validityFrom(now, PERSON_YEARS, issuer.notAfter);
  const certificate = await x509.X509CertificateGenerator.create({
    serialNumber: serial,
    subject: distinguishedName(name, schoolName),
    issuer: issuer.subjectName,
    notBefore: from < issuer.notBefore ? issuer.notBefore : from,
    notAfter: until,
    signingAlgorithm: KEY_ALGORITHM,
    publicKey: keys.publicKey,
    signingKey: await importKey(authority.key),
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature | x509.KeyUsageFlags.nonRepudiation, true),
      new x509.ExtendedKeyUsageExtension([DOCUMENT_SIGNING, EMAIL_PROTECTION]),
      ...(email === undefined ? [] : [new x509.SubjectAlternativeNameExtension([{ type: 'email' as const, value: email }])]),
      await x509.AuthorityKeyIdentifierExtension.create(issuer, false),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: new Uint8Array(certificate.rawData), key: await exportKey(keys.privateKey) };
}

import { createPrivateKey, createPublicKey } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { createAuthority, type KeyedCertificate } from '@/lib/pdf/certificates/authority';
import { certificateFacts, isIssuedBy, readCertificateFacts } from '@/lib/pdf/certificates/certificate-facts';
import { certificatePem, certificatesFromPem } from '@/lib/pdf/certificates/pem';
import { issuePersonCertificate } from '@/lib/pdf/certificates/person-certificate';
import { newSerial } from '@/lib/pdf/certificates/serial';
import { needsNewCertificate, validityState } from '@/lib/pdf/certificates/validity';
import { asFile, runTool } from '@/tests/support/pdf/tools';

const now = new Date('2026-11-25T12:00:00Z');
const schoolName = 'Tern Lane School';
let authority: KeyedCertificate;
let person: KeyedCertificate;

beforeAll(async () => {
  authority = await createAuthority({ schoolName, now, serial: '40'.repeat(16) });
  person = await issuePersonCertificate({ authority, name: 'Łukasz Πάππος 王', schoolName, email: 'l@tern-lane.example', now, serial: '41'.repeat(16) });
}, 60_000);

const described = (der: Uint8Array) => runTool('openssl', ['x509', '-noout', '-text', '-nameopt', 'utf8,sep_comma_plus', '-in', asFile(certificatePem(der), 'a.pem')]).text;

describe('the school’s certificate', () => {
  it('may issue for people and for nobody who issues further', () => {
    const text = described(authority.certificate);
    expect(text).toMatch(/Basic Constraints: critical\s+CA:TRUE, pathlen:0/);
    expect(text).toMatch(/Key Usage: critical\s+Certificate Sign, CRL Sign/);
    expect(text).toContain('NIST CURVE: P-256');
    expect(text).toContain(`Serial Number:\n            ${'40:'.repeat(15)}40`);
  });

  it('lasts ten years', () => { expect(certificateFacts(authority.certificate)).toMatchObject({ from: new Date('2026-11-25T11:00:00Z'), until: new Date('2036-11-25T12:00:00Z'), holder: `${schoolName}: signing` }); });
});

describe('a person’s certificate', () => {
  it('is for signing documents', () => {
    const text = described(person.certificate);
    expect(text).toMatch(/Basic Constraints: critical\s+CA:FALSE/);
    expect(text).toMatch(/Key Usage: critical\s+Digital Signature, Non Repudiation/);
    // RFC 9336 (from memory): id-kp-documentSigning.
    expect(text).toMatch(/Extended Key Usage:\s+1\.3\.6\.1\.5\.5\.7\.3\.36, E-mail Protection/);
    expect(text).toContain('email:l@tern-lane.example');
    expect(text).toContain('Subject: CN=Łukasz Πάππος 王,O=Tern Lane School');
  });

  it('holds for another program that knows the school', () => {
    const result = runTool('openssl', ['verify', '-attime', String(now.getTime() / 1000), '-CAfile', asFile(certificatePem(authority.certificate), 'ca.pem'), asFile(certificatePem(person.certificate), 'p.pem')]);
    expect(result).toMatchObject({ code: 0 });
  });

  it('says nothing of an address that was not given', async () => {
    const quiet = await issuePersonCertificate({ authority, name: 'A', schoolName, now, serial: newSerial() });
    expect(described(quiet.certificate)).not.toContain('Alternative Name');
  });

  it.each(['A, B + C="d"', 'O=Other School', String.raw`Back\slash`, '#0500', ' spaced ', 'a\nCN=b'])('takes a name as it is, not as a form of its own: %j', async (name) => {
    const oddSchool = await createAuthority({ schoolName: name, now, serial: newSerial() });
    const named = await issuePersonCertificate({ authority: oddSchool, name, schoolName, now, serial: newSerial() });
    expect(certificateFacts(named.certificate).holder).toBe(name);
    expect(certificateFacts(named.certificate).issuer).toBe(`${name}: signing`);
    expect(isIssuedBy(named.certificate, oddSchool.certificate)).toBe(true);
  });

  it('never outlives the school’s', async () => {
    const late = await issuePersonCertificate({ authority, name: 'A', schoolName, now: new Date('2036-01-01T00:00:00Z'), serial: newSerial() });
    expect(certificateFacts(late.certificate).until).toEqual(certificateFacts(authority.certificate).until);
  });

  it.each(['2026-11-25T10:00:00Z', '2036-11-25T12:00:01Z'])('is not issued while the school’s is not in force: %s', async (at) => {
    await expect(issuePersonCertificate({ authority, name: 'A', schoolName, now: new Date(at), serial: newSerial() })).rejects.toThrow('not in force');
  });

  it('has a key of its own that fits it', () => {
    const [, pem] = [certificatePem(person.certificate), createPrivateKey({ key: Buffer.from(person.key), format: 'der', type: 'pkcs8' })];
    const fromCertificate = runTool('openssl', ['x509', '-noout', '-pubkey', '-in', asFile(certificatePem(person.certificate), 'p.pem')]).text;
    expect(createPublicKey(pem).export({ format: 'pem', type: 'spki' })).toBe(fromCertificate);
  });
});

describe('who issued what', () => {
  it('is not a matter of names', async () => {
    const impostor = await createAuthority({ schoolName, now, serial: '40'.repeat(16) });
    const forged = await issuePersonCertificate({ authority: impostor, name: 'Łukasz Πάππος 王', schoolName, now, serial: newSerial() });
    expect(isIssuedBy(person.certificate, authority.certificate)).toBe(true);
    expect(isIssuedBy(forged.certificate, authority.certificate)).toBe(false);
    expect(isIssuedBy(authority.certificate, authority.certificate)).toBe(false);
    expect(isIssuedBy(person.certificate, person.certificate)).toBe(false);
  });

  it('is undefined for what is no certificate', () => { expect(readCertificateFacts(Uint8Array.of(1, 2, 3))).toBeUndefined(); });
});

describe('the end of a certificate', () => {
  const validity = { from: now, until: new Date('2028-11-25T12:00:00Z') };
  it.each([['2026-11-25T11:59:59Z', 'not-yet', true], ['2026-11-25T12:00:00Z', 'in-force', false], ['2028-10-26T11:00:00Z', 'in-force', false], ['2028-10-26T13:00:00Z', 'ends-soon', true], ['2028-11-25T12:00:00Z', 'ends-soon', true], ['2028-11-25T12:00:01Z', 'ended', true]] as const)('at %s: %s', (at, state, renew) => {
    expect(validityState(validity, new Date(at))).toBe(state);
    expect(needsNewCertificate(validity, new Date(at))).toBe(renew);
  });
});

describe('files of certificates', () => {
  it('come back as they were', () => { expect(certificatesFromPem(`text\n${certificatePem(authority.certificate)}\n${certificatePem(person.certificate)}`)).toEqual([authority.certificate, person.certificate]); });
});

describe('a serial', () => {
  it('is positive and as long as all others whatever the draw', () => {
    expect(newSerial(new Uint8Array(16).fill(0xff))).toBe(`7f${'ff'.repeat(15)}`);
    expect(newSerial(new Uint8Array(16))).toBe(`40${'00'.repeat(15)}`);
    expect(newSerial()).not.toBe(newSerial());
  });
});

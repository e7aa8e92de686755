import { createAuthority, type KeyedCertificate } from '@/lib/pdf/certificates/authority';
import { issuePersonCertificate } from '@/lib/pdf/certificates/person-certificate';
import { newSerial } from '@/lib/pdf/certificates/serial';
import type { Signer } from '@/lib/pdf/sign/signer';

export const SCHOOL_OPENED = new Date('2026-11-20T08:00:00Z');

export interface SampleSchool {
  readonly authority: KeyedCertificate;
  signer(name: string): Promise<Signer>;
}

/** A school with its own certificate, which can make anyone able to sign. */
export async function sampleSchool(schoolName: string): Promise<SampleSchool> {
  const authority = await createAuthority({ schoolName, now: SCHOOL_OPENED, serial: newSerial() });
  return {
    authority,
    signer: async (name) => {
      const person = await issuePersonCertificate({ authority, name, schoolName, now: SCHOOL_OPENED, serial: newSerial() });
      return { certificate: person.certificate, issuer: authority.certificate, key: person.key };
    },
  };
}

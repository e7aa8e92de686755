import { describe, expect, it } from 'vitest';
import type { FileCheck, SignatureReport, SignedCheck } from '@/lib/pdf/verify/file-check';
import { verdictOf, type DocumentStatus } from '@/lib/pdf/verify/verdict';
import { signatureInWords, verdictInWords } from '@/lib/pdf/verify/words';

const since = new Date('2026-10-12T00:00:00Z');
const formatDate = (date: Date) => date.toISOString().slice(0, 10);
const signature: SignatureReport = {
  role: 'Officer', holder: 'R. Okafor', certificate: undefined, issuedHere: true, reason: 'Checked', claimedAt: since, stampedAt: undefined,
  revision: 3, coversTo: 100, fingerprint: 'f', findings: [],
};
const file = (change: Partial<SignedCheck> = {}): SignedCheck => ({ state: 'unchanged', fingerprint: 'f', signatures: [signature], unsignedRoles: [], findings: [], ...change });

const STATUSES: readonly DocumentStatus[] = [
  { state: 'in-force' }, { state: 'under-review', since }, { state: 'suspended', since, reason: 'A pack vented' }, { state: 'superseded', since },
  { state: 'withdrawn', since }, { state: 'ended', since }, { state: 'no-record' }, { state: 'not-asked' },
];
const FAULTS = ['empty', 'not-pdf', 'too-large', 'truncated', 'encrypted', 'other-structure', 'damaged'] as const;
const BAD_FILES: readonly FileCheck[] = [
  file({ state: 'changed', findings: [{ kind: 'after-last-signature', start: 100, end: 120 }] }), file({ state: 'foreign' }), file({ unsignedRoles: ['Officer'] }),
  { state: 'unsigned', fingerprint: 'f' }, ...FAULTS.map((fault) => ({ state: 'unreadable', fault, fingerprint: 'f' }) as const),
];

describe('a verdict', () => {
  it('is good only for an unchanged and finished file that is in force', () => {
    for (const status of STATUSES) {
      for (const check of [file(), ...BAD_FILES]) {
        const { tone } = verdictInWords(verdictOf(check, status), formatDate);
        expect(tone === 'good').toBe(check.state === 'unchanged' && check.unsignedRoles.length === 0 && status.state === 'in-force');
      }
    }
  });

  it('never asks the records about a file that is not what was signed', () => {
    for (const check of BAD_FILES) expect(new Set(STATUSES.map((status) => JSON.stringify(verdictOf(check, status)))).size).toBe(1);
  });

  it('has words of its own for each', () => {
    const verdicts = [...STATUSES.map((status) => verdictOf(file(), status)), ...BAD_FILES.map((check) => verdictOf(check, { state: 'in-force' }))];
    const words = verdicts.map((verdict) => verdictInWords(verdict, formatDate));
    expect(new Set(words.map(({ heading, sentences }) => [heading, ...sentences].join())).size).toBe(verdicts.length);
    // "Unchanged" may stand alone nowhere, and never over a file that is.
    for (const { heading } of words) expect(heading).not.toBe('Unchanged');
    expect(words.filter(({ heading }) => heading.startsWith('Unchanged')).length).toBe(STATUSES.length);
  });

  it.each<[DocumentStatus, string]>([
    [{ state: 'in-force' }, 'Unchanged and in force'],
    [{ state: 'superseded', since }, 'Unchanged, no longer in force'],
    [{ state: 'under-review', since }, 'Unchanged, review asked since 2026-10-12'],
    [{ state: 'suspended', since, reason: 'A pack vented' }, 'Unchanged, but suspended since 2026-10-12'],
  ])('is headed plainly: %o', (status, heading) => { expect(verdictInWords(verdictOf(file(), status), formatDate).heading).toBe(heading); });

  it('says why, which bytes, and which signature is missing', () => {
    const said = (check: FileCheck, status: DocumentStatus = { state: 'in-force' }) => verdictInWords(verdictOf(check, status), formatDate).sentences.join(' ');
    expect(said(BAD_FILES[0]!)).toContain('Something was added or cut off after the last signature (bytes 100 to 120).');
    expect(said(BAD_FILES[2]!)).toContain('the safety officer');
    expect(said(file(), { state: 'suspended', since, reason: 'A pack vented' })).toContain('A pack vented');
    expect(said(file(), { state: 'in-force', until: since })).toContain('until 2026-10-12');
  });
});

describe('a signature in words', () => {
  it('says whose clock it was and whether the school vouches', () => {
    expect(signatureInWords(signature, formatDate)).toBe('R. Okafor signed as the safety officer on 2026-10-12 by the clock of the computer used. This school vouches for the certificate.');
    expect(signatureInWords({ ...signature, holder: '', issuedHere: false, claimedAt: undefined, role: 'Field 7' }, formatDate)).toBe('Somebody whose certificate cannot be read signed as Field 7 at a time that is not given. This school does not vouch for the certificate.');
    expect(signatureInWords({ ...signature, stampedAt: since }, formatDate)).toContain('by a time stamp service');
  });
});

import 'server-only';
import { documentOfFile, documentOfNumber, type DocumentRecord } from '@/lib/db/documents/document-status';
import { allAuthorities } from '@/lib/db/signing/certificates';
import { checkFile } from '@/lib/pdf/verify/check-file';
import { verdictOf } from '@/lib/pdf/verify/verdict';
import { signatureInWords, type VerdictWords, verdictInWords } from '@/lib/pdf/verify/words';
import { dayWords, type DateStyle } from '@/lib/wording/dates';
import { database } from '../database';
import { statusOf } from './document-status';

export interface CheckedFile {
  readonly verdict: VerdictWords;
  readonly signatures: readonly string[];
  /** SHA-256 of the file, hexadecimal */
  readonly fingerprint: string;
  /** what the records know of it; null when nothing */
  readonly paper: { readonly number: string; readonly title: string; readonly school: string } | null;
}

const ANYWHERE: DateStyle = { locale: 'en-GB', timeZone: 'UTC' };

/** Checks a file that anybody hands in. Nothing of it is kept. */
export async function checkHandedIn(bytes: Uint8Array): Promise<CheckedFile> {
  const authorities = (await allAuthorities(database())).map(({ certificate }) => certificate);
  const check = checkFile(bytes, { authorities });
  const record = check.fingerprint === '' ? null : await documentOfFile(database(), check.fingerprint);
  const format = (date: Date): string => dayWords(date, styleOf(record));
  return {
    verdict: verdictInWords(verdictOf(check, statusOf(record, new Date())), format),
    signatures: 'signatures' in check ? check.signatures.map((signature) => signatureInWords(signature, format)) : [],
    fingerprint: check.fingerprint,
    paper: record === null ? null : { number: record.number, title: record.title, school: record.schoolName },
  };
}

export interface NumberStatus { readonly found: boolean; readonly heading: string; readonly sentence: string; readonly tone: VerdictWords['tone']; readonly school: string }

/** What the records say of the number on a printed page. It says nothing of what the page itself says. */
export async function statusOfNumber(number: string): Promise<NumberStatus> {
  const record = await documentOfNumber(database(), number.trim().toUpperCase());
  if (record === null) return { found: false, heading: 'No paper of this number', sentence: 'Look at the number again; it stands at the foot of every page. If it is right, no school here made this paper.', tone: 'stop', school: '' };
  return { found: true, school: record.schoolName, ...ofRecord(record) };
}

function ofRecord(record: DocumentRecord): Omit<NumberStatus, 'found' | 'school'> {
  const status = statusOf(record, new Date());
  const format = (date: Date): string => dayWords(date, styleOf(record));
  if (record.state !== 'signed' && status.state === 'in-force') return { tone: 'stop', heading: 'Not finished: a signature is missing', sentence: 'A paper of this number is waiting to be signed. It is not in force.' };
  switch (status.state) {
    case 'in-force': return { tone: 'good', heading: 'The paper of this number is in force', sentence: status.until === undefined ? 'Check the file itself to know that what you hold was not changed.' : `Until ${format(status.until)}, unless something changes before. Check the file itself to know that what you hold was not changed.` };
    case 'under-review': return { tone: 'doubt', heading: `Review asked since ${format(status.since)}`, sentence: 'Something happened that it did not reckon with. Ask the school before you rely on it.' };
    case 'suspended': return { tone: 'stop', heading: `Suspended since ${format(status.since)}`, sentence: `The safety officer has suspended it. Do not act on it. Reason: ${status.reason}` };
    case 'superseded': return { tone: 'stop', heading: 'No longer in force', sentence: `A newer version took its place on ${format(status.since)}.` };
    case 'withdrawn': return { tone: 'stop', heading: 'No longer in force', sentence: `It was withdrawn on ${format(status.since)}.` };
    case 'ended': return { tone: 'stop', heading: 'No longer in force', sentence: `Its time ended on ${format(status.since)}.` };
    case 'no-record':
    case 'not-asked': return { tone: 'doubt', heading: 'Not known', sentence: 'There is no record of it.' };
  }
}

const styleOf = (record: DocumentRecord | null): DateStyle => (record === null ? ANYWHERE : { locale: record.locale, timeZone: record.timeZone });

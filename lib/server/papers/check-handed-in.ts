import 'server-only';
import { documentOfFile, documentOfNumber, type DocumentRecord } from '@/lib/db/documents/document-status';
import { allAuthorities } from '@/lib/db/signing/certificates';
import { checkFile } from '@/lib/pdf/verify/check-file';
import type { FileCheck } from '@/lib/pdf/verify/file-check';
import { verdictOf } from '@/lib/pdf/verify/verdict';
import { signatureInWords, type VerdictWords, verdictInWords } from '@/lib/pdf/verify/words';
import { dayWords, momentWords, type DateStyle } from '@/lib/wording/dates';
import { database } from '../database';
import { statusOf } from './document-status';
import { type NumberWords, numberInWords } from './number-words';
import { unsignedInWords } from './unsigned-words';

export interface SignatureLine { readonly words: string; /** it holds, and the school vouches for whoever made it */ readonly holds: boolean }

export interface CheckedFile {
  readonly fileName: string;
  /** when it was checked, in words: a status is true of a moment */
  readonly checkedAt: string;
  readonly verdict: VerdictWords;
  readonly signatures: readonly SignatureLine[];
  /** SHA-256 of the file, hexadecimal */
  readonly fingerprint: string;
  /** what the records know of it; null when nothing */
  readonly paper: { readonly number: string; readonly title: string; readonly school: string } | null;
  /** certificates of the school that vouches for it, by their fingerprints */
  readonly certificates: readonly string[];
}

const ANYWHERE: DateStyle = { locale: 'en-GB', timeZone: 'UTC' };

/** Checks a file that anybody hands in. Nothing of it is kept. */
export async function checkHandedIn(fileName: string, bytes: Uint8Array): Promise<CheckedFile> {
  const now = new Date();
  const { check, certificates } = await checkForSomeSchool(bytes);
  const record = check.fingerprint === '' ? null : await documentOfFile(database(), check.fingerprint);
  const style = styleOf(record);
  const format = (date: Date): string => dayWords(date, style);
  return {
    fileName, checkedAt: momentWords(now, style),
    verdict: check.state === 'unsigned' && record?.state === 'made' ? unsignedInWords(statusOf(record, now), format) : verdictInWords(verdictOf(check, statusOf(record, now)), format),
    signatures: 'signatures' in check ? check.signatures.map((signature) => ({ words: signatureInWords(signature, format), holds: signature.issuedHere && signature.findings.length === 0 })) : [],
    fingerprint: check.fingerprint,
    paper: record === null ? null : { number: record.number, title: record.title, school: record.schoolName },
    certificates,
  };
}

/**
 * One school has to vouch for all signatures of a file: of two schools in one installation neither vouches for the
 * people of the other. So each is asked by itself.
 */
async function checkForSomeSchool(bytes: Uint8Array): Promise<{ readonly check: FileCheck; readonly certificates: readonly string[] }> {
  const authorities = await allAuthorities(database());
  let last: FileCheck | null = null;
  for (const schoolId of new Set(authorities.map((one) => one.schoolId))) {
    const ours = authorities.filter((one) => one.schoolId === schoolId);
    const check = checkFile(bytes, { authorities: ours.map(({ certificate }) => certificate) });
    if (check.state === 'unchanged' || check.state === 'changed') return { check, certificates: ours.map(({ fingerprint }) => fingerprint) };
    last = check;
  }
  return { check: last ?? checkFile(bytes, { authorities: [] }), certificates: [] };
}

export interface NumberStatus extends NumberWords { readonly found: boolean; readonly school: string; readonly checkedAt: string }

/** What the records say of the number on a printed page. It says nothing of what the page itself says. */
export async function statusOfNumber(number: string): Promise<NumberStatus> {
  const record = await documentOfNumber(database(), number.trim().toUpperCase());
  const [now, style] = [new Date(), styleOf(record)];
  const words = numberInWords(record === null ? null : { state: record.state, status: statusOf(record, now) }, (date) => dayWords(date, style));
  return { found: record !== null, school: record?.schoolName ?? '', checkedAt: momentWords(now, style), ...words };
}

const styleOf = (record: DocumentRecord | null): DateStyle => (record === null ? ANYWHERE : { locale: record.locale, timeZone: record.timeZone });

import type { PdfFaultKind } from '../structure/pdf-fault';
import type { Finding, FindingKind, SignatureReport, SignedCheck } from './file-check';
import type { FileVerdict } from './verdict';

export interface VerdictWords {
  /** how it looks: a good one, one with a doubt, one that stops; never the only sign of it */
  readonly tone: 'good' | 'doubt' | 'stop';
  readonly heading: string;
  readonly sentences: readonly string[];
}

/** A date as the school writes it. */
export type FormatDate = (date: Date) => string;

/** The verdict on a file in plain words. */
export function verdictInWords(verdict: FileVerdict, formatDate: FormatDate): VerdictWords {
  switch (verdict.kind) {
    case 'in-force':
      if (verdict.about === 'incident') return { tone: 'good', heading: 'Unchanged, and the record that counts', sentences: [UNCHANGED, 'It is what the school has on record of this incident, as its safety officer signed it.'] };
      return { tone: 'good', heading: 'Unchanged and in force', sentences: [UNCHANGED, verdict.until === undefined ? 'The school says that it is in force.' : `The school says that it is in force until ${formatDate(verdict.until)}, unless something changes before.`] };
    case 'under-review':
      return { tone: 'doubt', heading: `Unchanged, review asked since ${formatDate(verdict.since)}`, sentences: [UNCHANGED, verdict.about === 'incident' ? 'The incident was opened again since. Ask the school what is known now.' : 'Something happened that it did not reckon with. Ask the school before you rely on it.'] };
    case 'suspended':
      return { tone: 'stop', heading: `Unchanged, but suspended since ${formatDate(verdict.since)}`, sentences: [UNCHANGED, `The safety officer has suspended it. Do not act on it. Reason: ${verdict.reason}`] };
    case 'no-longer-in-force':
      return { tone: 'stop', heading: 'Unchanged, no longer in force', sentences: [UNCHANGED, `${NO_LONGER[verdict.why]} on ${formatDate(verdict.since)}. Do not act on it; ask the school for the one that counts.`] };
    case 'status-unknown':
      return { tone: 'doubt', heading: 'Unchanged; whether it is in force is not known', sentences: [UNCHANGED, STATUS_UNKNOWN[verdict.why]] };
    case 'unfinished':
      return { tone: 'stop', heading: 'Not finished: a signature is missing', sentences: [`What was signed is unchanged, but there is no signature in the place for: ${verdict.check.unsignedRoles.map(roleInWords).join(', ')}. It is not in force.`] };
    case 'changed':
      if (isOnlyCutOff(verdict.check)) return { tone: 'stop', heading: FAULTS.truncated.heading, sentences: [FAULTS.truncated.sentence, ...findingsInWords(verdict.check.findings, [])] };
      return { tone: 'stop', heading: 'Changed', sentences: ['This is not the file that was signed. Do not rely on it, not even on the parts that look right.', ...findingsInWords(verdict.check.findings, verdict.check.signatures)] };
    case 'foreign':
      return { tone: 'stop', heading: 'Not signed by this school', sentences: ['It has a signature, but this school does not vouch for the person or program that made it. A name in a signature proves nothing by itself.'] };
    case 'unsigned':
      return { tone: 'stop', heading: 'Not signed', sentences: ['This file has no signature. Anyone could have made it.'] };
    case 'unreadable':
      return { tone: 'stop', heading: FAULTS[verdict.fault].heading, sentences: [FAULTS[verdict.fault].sentence] };
  }
}

/** A signature in one sentence. */
export function signatureInWords(signature: SignatureReport, formatDate: FormatDate): string {
  const who = signature.holder === '' ? 'Somebody whose certificate cannot be read' : signature.holder;
  const when = signature.stampedAt !== undefined ? `on ${formatDate(signature.stampedAt)} by a time stamp service` : signature.claimedAt !== undefined ? `on ${formatDate(signature.claimedAt)} by the clock of the computer used` : 'at a time that is not given';
  const vouched = signature.issuedHere ? 'This school vouches for the certificate.' : 'This school does not vouch for the certificate.';
  return `${who} signed as ${roleInWords(signature.role)} ${when}. ${vouched}`;
}

const UNCHANGED = 'Every byte is as it was when it was signed.';
const NO_LONGER = { superseded: 'A newer version took its place', withdrawn: 'It was withdrawn', ended: 'Its time ended' } as const;
const STATUS_UNKNOWN = {
  'no-record': 'This school vouches for the signatures, but has no record of this document. Ask the school before you rely on it.',
  'not-asked': 'The file alone cannot say whether it was replaced or withdrawn since. Ask the school, or check again online.',
} as const;

function roleInWords(role: string): string {
  return ({ Preparer: 'the one who prepared it', Officer: 'the safety officer' } as Readonly<Record<string, string>>)[role] ?? role;
}

const FINDINGS: Readonly<Record<FindingKind, string>> = {
  'byte-range': 'A signature does not cover what it ought to cover',
  contents: 'In the place of a signature stands something else',
  digest: 'What was signed is not what stands here',
  container: 'A signature was altered after it was made',
  'certificate-period': 'A signature claims a time at which its certificate was not valid',
  timestamp: 'A time stamp does not belong to its signature',
  'after-last-signature': 'Something was added or cut off after the last signature',
  'cut-off': 'Something was begun here whose end is missing',
  'not-permitted': 'Something was changed between two signatures',
};

/** All that stands there is as it was signed, but not all of it is there. */
function isOnlyCutOff({ findings, signatures }: SignedCheck): boolean {
  return findings.every(({ kind }) => kind === 'cut-off') && signatures.every((signature) => signature.findings.length === 0);
}

function findingsInWords(ofFile: readonly Finding[], signatures: readonly SignatureReport[]): readonly string[] {
  return [...signatures.flatMap(({ findings }) => findings), ...ofFile].map(({ kind, start, end }) => `${FINDINGS[kind]} (bytes ${start} to ${end}).`);
}

const FAULTS: Readonly<Record<PdfFaultKind, { readonly heading: string; readonly sentence: string }>> = {
  empty: { heading: 'Empty file', sentence: 'There is nothing in this file.' },
  'not-pdf': { heading: 'Not a PDF', sentence: 'This file is not a PDF, so it is no paper of this school.' },
  'too-large': { heading: 'Too large to check', sentence: 'This file is larger than any paper that this school signs.' },
  truncated: { heading: 'Cut off', sentence: 'The end of this file is missing. Perhaps it was not sent or stored whole: ask for it again.' },
  encrypted: { heading: 'Locked with a password', sentence: 'This file is encrypted. Papers that this school signs never are, so it is not the file that was signed.' },
  'other-structure': { heading: 'Not made here', sentence: 'This file is built in a way that papers of this school are not. It was made or saved anew by another program, and is not the file that was signed.' },
  damaged: { heading: 'Damaged or made elsewhere', sentence: 'This file breaks rules that papers of this school keep. It was damaged, changed, or made by another program.' },
};

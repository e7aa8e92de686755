/** What has become of a file that a venue holds, as its link says it. */
export interface FileStanding {
  /** good: it holds; doubt: ask the school; stop: nobody acts on it any more */
  readonly tone: 'good' | 'doubt' | 'stop';
  readonly heading: string;
  readonly sentence: string;
  /** whether the file itself is still shown: nobody is to read on in one that was taken back */
  readonly shown: boolean;
}

export interface FileFacts {
  /** days in words; null when it did not happen */
  readonly withdrawnOn: string | null;
  readonly withdrawnReason: string | null;
  readonly replacedOn: string | null;
  readonly endedOn: string | null;
  /** of the assessment it rests on */
  readonly suspendedOn: string | null;
  readonly assessmentGone: boolean;
}

const ASK = 'Ask the school before you rely on it.';

/** Whether a signed file still holds, the worst first. */
export function fileStanding({ withdrawnOn, withdrawnReason, replacedOn, endedOn, suspendedOn, assessmentGone }: FileFacts): FileStanding {
  if (withdrawnOn !== null) return { tone: 'stop', heading: 'Withdrawn: this file is no longer in force', sentence: `The school took it back on ${withdrawnOn}.${withdrawnReason === null ? '' : ` Reason: ${withdrawnReason}`}`, shown: false };
  if (replacedOn !== null) return { tone: 'stop', heading: 'Replaced: this file is no longer in force', sentence: `Another took its place on ${replacedOn}. Ask the school for a link to it.`, shown: false };
  if (endedOn !== null) return { tone: 'stop', heading: 'The event is over', sentence: `It was for one date and place only, and ended on ${endedOn}.`, shown: true };
  if (suspendedOn !== null) return { tone: 'stop', heading: 'Suspended: nobody acts on this file', sentence: `The safety officer suspended the assessment it rests on, on ${suspendedOn}. ${ASK}`, shown: true };
  if (assessmentGone) return { tone: 'doubt', heading: 'The assessment it rests on is no longer in force', sentence: ASK, shown: true };
  return { tone: 'good', heading: 'Signed and in force', sentence: 'For this date and place, as long as nothing changes that it reckons with.', shown: true };
}

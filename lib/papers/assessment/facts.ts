import type { Content } from '@/lib/content/model';
import type { AssessmentDocument } from '@/lib/core/document';
import type { ScoreResult } from '@/lib/core/result';

/** Who signs, as the law wants it: initials are not enough for adults. */
export interface Signer { readonly name: string; readonly post: string; readonly telephone: string; readonly employer: string }

/** A draft is printed to be read; what is made for signature holds once both have signed. */
type PaperState = 'draft' | 'for signature';

/** A stop condition that the officer accepted in writing. */
export interface Acceptance {
  readonly stop: string;
  readonly reason: string;
  /** what is done instead, until then */
  readonly replacedBy: string;
  /** day on which it ends by itself, in words; null where a paper of an authority stands behind it */
  readonly until: string | null;
  readonly paper: string | null;
  readonly by: string;
}

export interface PaperAction {
  readonly what: string;
  readonly owner: string;
  /** in words, or "no date" */
  readonly due: string;
  readonly state: 'open' | 'overdue' | 'done';
  readonly note: string;
  /** the control it puts in place, when it came from a suggestion */
  readonly control: string | null;
}

export interface PaperPack {
  readonly label: string;
  readonly kind: string;
  /** null where it is neither printed nor to be worked out */
  readonly energyWh: number | null;
  readonly fullVoltage: string;
  readonly source: string;
  readonly age: string;
  readonly lastCheck: string;
  readonly state: string;
  readonly place: string;
}

export interface PaperIncident { readonly number: string; readonly when: string; readonly what: string; readonly done: string; readonly state: string }

/** One answer as it was given, with its note and whatever shows that it is so. */
export interface PaperAnswer {
  /** of the question */
  readonly id: string;
  readonly section: string;
  readonly question: string;
  readonly answer: string;
  readonly standing: 'answered' | 'not sure' | 'not answered' | 'does not apply';
  readonly note: string;
  readonly evidence: string;
  /** who will find out, by when; empty when nobody has been named */
  readonly toFindOut: string;
}

/** Everything the signed paper of an assessment is made of, words for dates included. Nothing else is read. */
export interface AssessmentFacts {
  readonly content: Content;
  readonly document: AssessmentDocument;
  readonly result: ScoreResult;
  readonly edition: number;
  readonly number: string;
  readonly version: number;
  readonly state: PaperState;
  readonly format: 'A4' | 'LETTER';
  readonly language: string;
  /** ISO */
  readonly madeAt: string;
  readonly madeOn: string;
  readonly fingerprint: string;
  readonly verifyAt: string;
  /** where the paper stands as a page, for those who hear it */
  readonly twinAt: string;
  readonly school: { readonly name: string; readonly employer: string };
  readonly place: string;
  /** who has the keys, with the telephone; empty when nobody is named */
  readonly keyHolder: string;
  readonly season: string;
  readonly preparer: Signer;
  readonly officer: Signer;
  /** what was seen on site; null when nobody has gone there */
  readonly visit: { readonly on: string; readonly by: string; readonly seen: string } | null;
  readonly onTrust: string;
  readonly signedFor: 'today' | { readonly once: readonly string[] };
  readonly inForceUntil: string;
  /** what the paper covers before it must be looked at again */
  readonly covers: { readonly packs: number; readonly storedWh: number; readonly sessions: number; readonly people: number };
  readonly rulesConsulted: readonly { readonly what: string; readonly asked: string; readonly answer: string }[];
  readonly attachments: readonly { readonly title: string; readonly fingerprint: string }[];
  readonly acceptances: readonly Acceptance[];
  readonly actions: readonly PaperAction[];
  readonly answers: readonly PaperAnswer[];
  readonly packs: readonly PaperPack[];
  readonly incidents: readonly PaperIncident[];
  readonly comments: readonly { readonly by: string; readonly on: string; readonly text: string }[];
  readonly retention: string;
  /** end of the school's log when the paper was made; null in a preview, which is made of no moment */
  readonly logEnd: { readonly number: number; readonly hash: string } | null;
}

import type { Role } from '@/lib/access/roles';

/** What Today is made from: plain facts, gathered once, so that no two lines of the page contradict each other. */
export interface TodayFacts {
  readonly role: Role;
  readonly papers: readonly PaperFact[];
  readonly packs: readonly PackFact[];
  /** the latest session of each place */
  readonly sessions: readonly SessionFact[];
  readonly incidents: readonly IncidentFact[];
  readonly actions: readonly ActionFact[];
  readonly events: readonly EventFact[];
  readonly setUp: SetUp;
}

/** One version of an assessment that somebody still has to do with. */
export interface PaperFact {
  readonly id: string;
  /** title and place */
  readonly name: string;
  readonly state: 'draft' | 'with-officer' | 'returned' | 'signed';
  readonly preparer: string;
  readonly officer: string | null;
  /** the reader prepares it */
  readonly isMine: boolean;
  /** it was handed to the reader */
  readonly isForMe: boolean;
  /** of one that lies with the officer: the paper is signed by its preparer as it stands */
  readonly preparerSigned: boolean;
  /** of a signed one; null for the others */
  readonly standing: SignedFact | null;
}

export interface SignedFact {
  readonly force: 'in force' | 'suspended' | 'run out' | 'review asked';
  /** why it was suspended, or what it is to be looked at for */
  readonly reason: string | null;
  /** last day, in words; null when none was named */
  readonly until: string | null;
  readonly daysLeft: number | null;
  /** where register and log have left what was signed, a sentence each */
  readonly drifts: readonly string[];
  /** accepted stop conditions, with the days until they end; below 0 they have */
  readonly acceptances: readonly { readonly stop: string; readonly until: string; readonly daysLeft: number }[];
}

/** Why a pack needs somebody. */
export type PackNeed = 'say where' | 'wrong place' | 'waits too long' | 'waits' | 'never checked' | 'on watch';
export interface PackFact { readonly id: string; readonly label: string; readonly need: PackNeed; /** in words, such as "Waits 9 days for collection" */ readonly words: string }

export interface SessionFact {
  readonly id: string;
  readonly place: string;
  readonly state: 'open' | 'closed' | 'stopped';
  /** day and time in words */
  readonly began: string;
  readonly hoursAgo: number;
  /** what was not so at the opening check of one that did not begin, or at the closing check */
  readonly found: readonly string[];
}

export interface IncidentFact { readonly id: string; readonly name: string; readonly state: 'recorded' | 'in-review'; readonly daysOpen: number }

export interface ActionFact {
  readonly id: string;
  readonly title: string;
  readonly owner: string;
  readonly isMine: boolean;
  readonly due: string;
  /** until its day; below 0 it is overdue */
  readonly daysLeft: number;
  /** it settles a stop condition */
  readonly ofStop: boolean;
}

/** An event that is still to come. */
export interface EventFact {
  readonly id: string;
  readonly title: string;
  readonly state: 'draft' | 'with-officer' | 'returned' | 'signed';
  readonly preparer: string;
  readonly isMine: boolean;
  /** it was handed to the reader */
  readonly isForMe: boolean;
  /** of one that lies with the officer: the file is signed by its preparer as it stands */
  readonly preparerSigned: boolean;
  readonly daysLeft: number;
}

/** What a school has of the things without which nothing begins. */
export interface SetUp { readonly people: number; readonly sites: number; readonly packs: number; readonly papers: number }

import type { EventState } from './standing';

/** What the words are made of: names and days as they are to be read. */
export interface EventStandingFacts {
  readonly state: EventState;
  readonly preparer: string;
  /** whom it was handed to; null before */
  readonly officer: string | null;
  readonly preparerSigned: boolean;
  readonly open: number;
  readonly over: boolean;
  readonly returnedReason: string | null;
  readonly withdrawn: { readonly on: string; readonly reason: string } | null;
  readonly cancelled: { readonly on: string; readonly reason: string } | null;
}

export interface EventStandingWords { readonly title: string; readonly next: string; readonly kind: 'know' | 'act' | 'done' | 'not sure' }

/** Where an event stands, and who does what next. */
export function eventStandingWords(facts: EventStandingFacts): EventStandingWords {
  const { state, preparer, open } = facts;
  switch (state) {
    case 'draft': return open === 0
      ? { kind: 'know', title: 'Nothing is open: it can be handed over', next: `${preparer} reads the file, signs it and hands it over to a safety officer. Until both have signed it permits nothing.` }
      : { kind: 'know', title: `A draft: ${lines(open)} open`, next: 'Mend what the check below names. The officer may let some lines stand in writing. Until both have signed it permits nothing.' };
    case 'returned': return { kind: 'act', title: 'Returned', next: `${facts.returnedReason ?? ''} ${preparer} changes it and hands it over again.`.trim() };
    case 'with-officer': return withOfficer(facts, facts.officer ?? 'the safety officer');
    case 'signed': return signed(facts);
    case 'withdrawn': return { kind: 'act', title: `The file was withdrawn on ${facts.withdrawn?.on ?? ''}`, next: `${facts.withdrawn?.reason ?? ''} Its links and its number say so. Copy the event to make another file.`.trim() };
    case 'cancelled': return { kind: 'know', title: `Called off on ${facts.cancelled?.on ?? ''}`, next: facts.cancelled?.reason ?? '' };
  }
}

function withOfficer({ preparer, preparerSigned, open }: EventStandingFacts, officer: string): EventStandingWords {
  if (!preparerSigned) return { kind: 'act', title: 'The file has changed', next: `${officer} let a line of the check stand, which is printed on the file. ${preparer} reads it and signs it once more; then ${officer} can sign.` };
  if (open > 0) return { kind: 'act', title: `With ${officer}: ${lines(open)} open`, next: `It cannot be signed yet. ${officer} returns it, or lets stand in writing what may stand.` };
  return { kind: 'act', title: `With ${officer}`, next: `${officer} reads the file, and signs it or returns it.` };
}

function signed({ over, open }: EventStandingFacts): EventStandingWords {
  if (over) return { kind: 'know', title: 'Signed, and over', next: 'The file stays as it was signed, to be read.' };
  if (open > 0) return { kind: 'act', title: `Signed, but ${open === 1 ? 'one thing is' : `${open} things are`} no longer as signed`, next: 'Mend it before anybody leaves. If that cannot be, withdraw the file and make another.' };
  return { kind: 'done', title: 'Signed by both', next: 'Hand the venue its file, or a link to it. What was signed does not change any more.' };
}

const lines = (count: number): string => (count === 1 ? 'one line of the check is' : `${count} lines of the check are`);

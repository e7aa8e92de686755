import type { Force } from './covers';
import type { AssessmentState } from './standing';

/** What the words are made of: names and days as they are to be read. */
export interface StandingFacts {
  readonly state: AssessmentState;
  readonly force: Force;
  readonly preparer: string;
  /** whom it was handed to; null before */
  readonly officer: string | null;
  readonly preparerSigned: boolean;
  readonly openStops: number;
  readonly until: string | null;
  readonly suspended: { readonly on: string; readonly by: string; readonly reason: string } | null;
  readonly reviewAsked: { readonly on: string; readonly reason: string } | null;
  readonly supersededBy: number | null;
}

export interface StandingWords {
  /** where it stands */
  readonly title: string;
  /** who does what next */
  readonly next: string;
  /** know: nothing to be done; act: a person is needed now; done: in force; not sure: review asked */
  readonly kind: 'know' | 'act' | 'done' | 'not sure';
}

/** Where a version stands, and who does what next. */
export function standingWords(facts: StandingFacts): StandingWords {
  const officer = facts.officer ?? 'the safety officer';
  switch (facts.state) {
    case 'draft': return { kind: 'know', title: 'A draft', next: `${facts.preparer} prepares it and hands it over to a safety officer. Open stop conditions do not stand in the way of that: the officer decides on them. Until it is signed it permits nothing.` };
    case 'returned': return { kind: 'act', title: 'Returned with comments', next: `${facts.preparer} answers the comments, changes what is to be changed, and hands it over again.` };
    case 'with-officer': return withOfficer(facts, officer);
    case 'signed': return inForce(facts, officer);
    case 'superseded': return { kind: 'know', title: facts.supersededBy === null ? 'No longer in force' : `No longer in force: version ${facts.supersededBy} took its place`, next: 'It stays as it was signed, to be read. Nothing is to be done with it.' };
    case 'withdrawn': return { kind: 'know', title: 'Withdrawn', next: 'It is not in force. Nothing is to be done with it.' };
  }
}

function withOfficer({ preparer, preparerSigned, openStops }: StandingFacts, officer: string): StandingWords {
  if (!preparerSigned) return { kind: 'act', title: 'The paper has changed', next: `${officer} has decided on a stop condition, which stands on the paper. ${preparer} reads the changed paper and signs it once more; then ${officer} can sign.` };
  if (openStops > 0) return { kind: 'act', title: `With ${officer}`, next: `${openStops === 1 ? 'One stop condition is open' : `${openStops} stop conditions are open`}, so it cannot be signed yet. ${officer} returns it to have them settled, or accepts in writing what may be accepted.` };
  return { kind: 'act', title: `With ${officer}`, next: `${officer} reads it, and signs it or returns it with comments.` };
}

function inForce({ force, until, suspended, reviewAsked, preparer }: StandingFacts, officer: string): StandingWords {
  if (suspended !== null) return { kind: 'act', title: `Suspended since ${suspended.on}`, next: `${suspended.by} took it out of force: ${suspended.reason} Nobody charges until a safety officer lifts it.` };
  if (force === 'run out') return { kind: 'act', title: `Its time ended on ${until ?? 'a day nobody named'}`, next: `${preparer} begins the next version as a copy and hands it over. Nobody charges before it is signed.` };
  if (reviewAsked !== null) return { kind: 'not sure', title: `Review asked since ${reviewAsked.on}`, next: `${reviewAsked.reason}. ${officer} looks at it again: settles it, suspends it, or asks for a next version.` };
  return { kind: 'done', title: until === null ? 'In force' : `In force until ${until}`, next: 'As long as what it assumes holds, and nothing happens that contradicts it.' };
}

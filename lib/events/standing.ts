/** Where an event stands on its way. A signed one is never changed: it is withdrawn, and a copy takes its place. */
export const EVENT_STATES = ['draft', 'with-officer', 'returned', 'signed', 'withdrawn', 'cancelled'] as const;
export type EventState = (typeof EVENT_STATES)[number];

const WORDS: Readonly<Record<EventState, string>> = {
  draft: 'draft',
  'with-officer': 'with the officer',
  returned: 'returned',
  signed: 'signed',
  withdrawn: 'withdrawn',
  cancelled: 'called off',
};

/** A state as it is written for people. */
export function eventStateWords(state: EventState): string {
  return WORDS[state];
}

/** @throws on a word this program does not write: better than to take it for another */
export function eventStateOf(word: string): EventState {
  const known = EVENT_STATES.find((state) => state === word);
  if (known === undefined) throw new Error(`Unknown state ${word} of an event in the database`);
  return known;
}

/** Whether it may be written in: nobody edits what lies with the officer, was signed or is over with. */
export function isOpen(state: EventState): boolean {
  return state === 'draft' || state === 'returned';
}

/** What decides who may do what with one event. */
export interface EventStanding {
  readonly state: EventState;
  /** the person who prepares it and signs first */
  readonly preparerId: string;
  /** whether the preparer has signed the very file that the officer would sign */
  readonly preparerSigned: boolean;
  /** the officer whom the file names; null before it was handed over */
  readonly officerId: string | null;
}

/** Yes with the state that follows, or no in words that a person can act on. */
export type Move = { readonly ok: true; readonly to: EventState } | { readonly ok: false; readonly why: string };

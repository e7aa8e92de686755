import type { Facts } from './facts';

export const INCIDENT_STATES = ['recorded', 'in-review', 'closed'] as const;
export type IncidentState = (typeof INCIDENT_STATES)[number];

const WORDS: Readonly<Record<IncidentState, string>> = { 'recorded': 'recorded', 'in-review': 'in review', 'closed': 'closed' };

export function incidentStateWords(state: IncidentState): string {
  return WORDS[state];
}

/** A state out of the database. Throws on one this program does not write. */
export function incidentStateOf(word: string): IncidentState {
  const state = INCIDENT_STATES.find((known) => known === word);
  if (state === undefined) throw new Error(`Unknown state ${word} of an incident`);
  return state;
}

/** Added later, never written over: `risk` holds the id of the scenario it belongs to, or `none`. */
export const FOLLOW_UP_KINDS = ['cause', 'measure', 'report', 'note', 'risk', 'review', 'closed', 'reopened'] as const;
export type FollowUpKind = (typeof FOLLOW_UP_KINDS)[number];

export interface FollowUp {
  readonly kind: FollowUpKind;
  readonly text: string;
  readonly byName: string;
  readonly at: Date;
}

/** What decides about an incident. */
export interface IncidentStanding {
  readonly state: IncidentState;
  /** as they are now, corrections taken in */
  readonly facts: Facts;
  readonly followUps: readonly FollowUp[];
  /** corrective actions, whatever became of them */
  readonly actions: number;
  /** labels of linked packs of which nobody knows where they are */
  readonly packsUnplaced: readonly string[];
}

/** A decision: what follows, or why not, in words for the person. */
export type Decision<Change> = { readonly ok: true; readonly change: Change } | { readonly ok: false; readonly why: readonly string[] };

export const NOT_OPEN = 'It is closed. The safety officer opens it again first';

/** The scenario the officer said it belongs to, `none` when to none; null when nobody said. The last word counts. */
export function riskOf(followUps: readonly FollowUp[]): string | null {
  return followUps.findLast(({ kind }) => kind === 'risk')?.text ?? null;
}

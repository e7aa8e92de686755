import type { Correction, Facts } from './facts';
import type { FollowUp, IncidentStanding, IncidentState } from './standing';

/** A pack of an incident as the register has it now. */
export interface LinkedPack {
  readonly packId: string;
  readonly label: string;
  readonly state: string;
  /** id of a place of the content; null until somebody has said where it is */
  readonly placeNow: string | null;
  readonly placeNote: string | null;
}

/** All there is of an incident. */
export interface IncidentRecord {
  readonly id: string;
  readonly number: number;
  readonly state: IncidentState;
  readonly revision: number;
  readonly first: Facts;
  /** with all corrections */
  readonly facts: Facts;
  readonly corrections: readonly Correction[];
  readonly followUps: readonly FollowUp[];
  readonly persons: readonly { readonly id: string; readonly role: string; readonly initials: string | null; readonly hurt: string; readonly breathed: string; readonly firstAid: string | null; readonly removedAt: Date | null }[];
  readonly photos: readonly { readonly id: string; readonly byName: string; readonly at: Date; readonly removedAt: Date | null; readonly widthPx: number; readonly heightPx: number }[];
  readonly packs: readonly LinkedPack[];
  /** labels that the register does not know */
  readonly unknownLabels: readonly string[];
  readonly actions: readonly { readonly id: string; readonly title: string; readonly ownerName: string; readonly dueOn: string; readonly state: string }[];
  /** signed assessments it asked a review of */
  readonly reviews: readonly { readonly versionId: string; readonly title: string; readonly settledAt: Date | null }[];
  readonly byId: string;
  readonly byName: string;
  readonly recordedAt: Date;
  readonly closedAt: Date | null;
  readonly closedNote: string | null;
}

/** What a decision about an incident needs of it. */
export function standingOf({ state, facts, followUps, actions, packs }: IncidentRecord): IncidentStanding {
  return { state, facts, followUps, actions: actions.length, packsUnplaced: packs.filter(isUnplaced).map(({ label }) => label) };
}

/** Isolated, and nobody has said, or nobody knows, where it is. */
export function isUnplaced({ state, placeNow }: Pick<LinkedPack, 'state' | 'placeNow'>): boolean {
  return state === 'isolated' && (placeNow === null || placeNow === 'not-sure');
}

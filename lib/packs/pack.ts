import type { PackState } from './states/pack-states';

/** What the label and the school's papers say of a pack. What nobody knows is null. */
export interface PackDetails {
  readonly label: string;
  readonly series: number;
  readonly parallel: number;
  readonly capacityMah: number;
  readonly cRating: number | null;
  readonly printedWh: number | null;
  /** id of a cell type of the content; a text, because an older edition may have named others */
  readonly cellType: string;
  readonly connector: string | null;
  readonly maker: string | null;
  readonly seller: string | null;
  readonly batch: string | null;
  /** second-hand, a gift or self-made; null when nobody knows */
  readonly secondHand: boolean | null;
  /** YYYY-MM-DD */
  readonly boughtOn: string | null;
  readonly firstUsedOn: string | null;
  readonly chargesBefore: number | null;
  readonly areaId: string | null;
  /** shelf, case or spot in words */
  readonly place: string | null;
  readonly notes: string | null;
}

/** Cells in series and rows beside each other as labels have them: "4S", "4S2P". */
export function cellsInWords({ series, parallel }: Pick<PackDetails, 'series' | 'parallel'>): string {
  return `${series}S${parallel > 1 ? `${parallel}P` : ''}`;
}

/** A pack as the register holds it. */
export interface Pack extends PackDetails {
  readonly id: string;
  readonly siteId: string | null;
  readonly state: PackState;
  readonly stateReason: string | null;
  readonly stateSince: Date;
  readonly createdAt: Date;
  readonly revision: number;
}

/** A change of state, or of the place of a pack that is isolated (then both states are the same). */
export interface StateChange {
  readonly id: string;
  readonly from: PackState | null;
  readonly to: PackState;
  readonly reason: string;
  /** why it was isolated; null for other changes */
  readonly cause: IsolationCause | null;
  /** id of a place of the content; null until somebody has said where it is */
  readonly placeNow: string | null;
  readonly placeNote: string | null;
  readonly inSand: boolean | null;
  readonly checkId: string | null;
  readonly incidentId: string | null;
  readonly byName: string;
  readonly at: Date;
}

/** `sign`: a check or somebody saw a sign on the pack itself; `nearby`: it only lay beside another. */
export const ISOLATION_CAUSES = ['sign', 'incident', 'nearby'] as const;
export type IsolationCause = (typeof ISOLATION_CAUSES)[number];

/** What makes two labels the same: capital letters and blanks do not. */
export function labelKey(label: string): string {
  return label.trim().replace(/\s+/gu, ' ').toLowerCase();
}

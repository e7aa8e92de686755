import type { ControlUse } from './controls';
import type { Kind, SeverityClass } from './values';

/** Where a pack burns. */
export type Area = 'charging' | 'storage' | 'arena' | 'vehicle';

/** How many packs burn together; how each is counted is said in `packCountRule`. */
export type PackCount = 'one' | 'lot' | 'all' | 'damaged' | 'damagedAll' | 'transit';

/** What class an end has: always the same, or the one that smoke or heat of so many packs have in that place. */
export type SeverityRule =
  | { readonly fixed: SeverityClass; readonly basis?: string }
  | {
    readonly from: 'smoke'; readonly area: Area; readonly packs: PackCount; readonly near: boolean; readonly foundLater: boolean;
    /** inputs whose people share that air, in place of those of the area */
    readonly sharedBy?: readonly string[];
  }
  | { readonly from: 'heat'; readonly what: 'burn' | 'spread'; readonly area: Area; readonly packs: PackCount };

export type Consequence = 'people-smoke' | 'people-burn' | 'people-impact' | 'spread-room' | 'programme';

/** One way an event may end. */
export interface Branch {
  readonly id: string;
  readonly title: string;
  readonly consequence: Consequence;
  /** median share of top events that reach this end with no mitigating control, and its error factor */
  readonly conditional: { readonly p: number; readonly errorFactor: number; readonly kind: Kind; readonly basis: string };
  readonly mitigating: readonly ControlUse[];
  readonly severity: SeverityRule;
}

/** One thing that may go wrong, from its causes to its ends. */
export interface Scenario {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** id of the exposure that its rate is multiplied with */
  readonly exposureBase: string;
  /** mean events per unit of exposure with every control absent, and P95 / P50 of the gamma around it */
  readonly rate: { readonly mean: number; readonly errorFactor: number; readonly kind: Kind; readonly basis: string };
  /** share of top events that are a battery fire, 0 to 1 */
  readonly fireShare: number;
  readonly preventive: readonly ControlUse[];
  readonly branches: readonly Branch[];
}

export const SITE_KINDS = ['own', 'away'] as const;
export type SiteKind = (typeof SITE_KINDS)[number];

/** What an area is used for. */
export const AREA_USES = ['charging', 'storage', 'arena', 'isolation', 'disposal'] as const;
export type AreaUse = (typeof AREA_USES)[number];

/** How air gets in and out, or how its figure is known. */
export const AIR_MODES = ['closed', 'bit-open', 'wide-open', 'openings', 'fan', 'measured'] as const;
export type AirMode = (typeof AIR_MODES)[number];

export const SURFACES = ['unburnable', 'tile', 'metal', 'burnable', 'carpet-tiles'] as const;
export type Surface = (typeof SURFACES)[number];

export const DETECTORS = ['tested', 'not-tested', 'off-at-times', 'none'] as const;
export type Detectors = (typeof DETECTORS)[number];

export const FUEL_LOADS = ['light', 'ordinary', 'heavy'] as const;
export type FuelLoad = (typeof FUEL_LOADS)[number];

/** What a site's form holds. What nobody knows is null. */
export interface SiteDetails {
  readonly name: string;
  readonly kind: SiteKind;
  /** as a caller says it: street, gate, room */
  readonly address: string;
  /** null: that of the school */
  readonly emergencyNumber: string | null;
  readonly meetingPlace: string | null;
  readonly secondMeetingPlace: string | null;
  readonly keyHolder: string | null;
  readonly keyHolderPhone: string | null;
  readonly notes: string | null;
}

/** What an area's form holds, lengths in metres whatever they were typed in. What nobody knows is null, never 0. */
export interface AreaDetails {
  readonly use: AreaUse;
  readonly name: string;
  readonly outdoors: boolean;
  readonly lengthM: number | null;
  readonly widthM: number | null;
  readonly heightM: number | null;
  readonly airMode: AirMode | null;
  readonly airChangesPerHour: number | null;
  readonly airFlowM3PerH: number | null;
  /** of the gap straight to outdoors */
  readonly openingWidthM: number | null;
  readonly openingHeightM: number | null;
  /** doors and windows in words */
  readonly openings: string | null;
  readonly exits: number | null;
  readonly surface: Surface | null;
  readonly detectors: Detectors | null;
  readonly fuelLoad: FuelLoad | null;
  readonly peoplePresent: number | null;
  /** until everybody is out, timed; null when never timed */
  readonly evacuationS: number | null;
  readonly personDistanceM: number | null;
  readonly combustibleDistanceM: number | null;
  readonly clearHeightM: number | null;
  readonly notes: string | null;
}

export interface Area extends AreaDetails {
  readonly id: string;
  readonly siteId: string;
  readonly archivedAt: Date | null;
  readonly revision: number;
}

export interface Site extends SiteDetails {
  readonly id: string;
  readonly archivedAt: Date | null;
  readonly revision: number;
  /** those in use, by use and name */
  readonly areas: readonly Area[];
}

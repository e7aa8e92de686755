import type { Area, SeverityClass } from '@/lib/content/model';

/** One gas in the air of the room, evenly mixed. Times count from the start of the release. */
export interface GasLevel {
  /** all that is given off */
  readonly massMg: number;
  /** highest of the whole release, also of the part after people have left */
  readonly peakPpm: number;
  /** null when the level is not reached */
  readonly secondsToAegl2: number | null;
  readonly secondsToAegl3: number | null;
  /** until the gas is down to its re-entry value, 0 when it never passes it; no permission to go in */
  readonly clearingMinutes: number;
}

/** The smoke of one fire with all its yields at one level. */
export interface SmokeLevel {
  readonly HF: GasLevel;
  readonly CO: GasLevel;
  /** fractional effective dose of CO over the stay */
  readonly coDose: number;
  readonly smokeClass: SeverityClass;
  /** HF breathed beside the packs, at most; 0 where nobody is near */
  readonly nearFieldPpm: number;
  /** at 25 °C */
  readonly ventGasL: number;
  /** closed space that this gas fills to its lower flammability limit */
  readonly flammableBelowL: number;
  /** how near the room comes to that limit: 1 is the limit */
  readonly roomShareOfLfl: number;
}

/** The smoke of so many packs in one place. */
export interface SmokeCase {
  readonly area: Area;
  readonly packs: number;
  /** m³ */
  readonly volume: number;
  /** per hour */
  readonly airChanges: number;
  readonly releaseSeconds: number;
  readonly evacuationSeconds: number;
  readonly levels: { readonly low: SmokeLevel; readonly mid: SmokeLevel; readonly high: SmokeLevel };
}

export interface SmokeScreening { readonly one: SmokeCase; readonly lot: SmokeCase; readonly allOnTable: SmokeCase; readonly storeLot: SmokeCase; readonly vehicle: SmokeCase }

/** Flames and heat of one fire with its yields at one level. */
export interface HeatLevel {
  /** heat release of the packs that burn together, kW */
  readonly Q_kW: number;
  /** m */
  readonly flameHeight: number;
  /** distance within which wood is taken to ignite, m */
  readonly ignitionDistance: number;
  /** distance within which bare skin hurts, m */
  readonly painDistance: number;
}
export interface HeatCase { readonly low: HeatLevel; readonly mid: HeatLevel; readonly high: HeatLevel }
export interface HeatScreening { readonly one: HeatCase; readonly lot: HeatCase }

/** One pack, and all of them. */
export interface BatterySummary {
  readonly packWh: number;
  /** of a sound pack in the cabin of a passenger flight */
  readonly airClass: 'carry-on' | 'approval' | 'forbidden';
  readonly totalWh: number;
  readonly storedWh: number;
  /** charge current at 1C, A */
  readonly currentAt1C: number;
  /** pins of the balance plug: cells + 1 */
  readonly balancePins: number;
}

/** The circuit that packs are charged on. */
export interface ElectricalSummary {
  readonly loadWatts: number;
  readonly allowedWatts: number;
  /** load divided by what the circuit may carry for hours */
  readonly loadShare: number;
}

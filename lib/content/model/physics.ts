import type { Kind } from './values';

/** A quantity nobody knows to the digit, in its `unit`: from the low to the high end of what its source, or our judgement, gives. */
export interface Spread { readonly id: string; readonly unit: string; readonly low: number; readonly mid: number; readonly high: number; readonly kind: Kind; readonly source: string }

/** A quantity the calculation takes as known, in its `unit`; `low` and `high` say how far sources differ. */
export interface Constant { readonly id: string; readonly value: number; readonly unit: string; readonly kind: Kind; readonly source: string; readonly low: number; readonly high: number }

export type PhysicsId =
  | 'hfYield' | 'gasVolume' | 'coFraction' | 'lflVentGas' | 'peakHeatRelease' | 'radiantFraction'
  | 'releaseDuration' | 'packToPackTime' | 'burningTogether' | 'nearTime' | 'flameBase';

export type ConstantId =
  | 'molarVolume' | 'molarMassHF' | 'molarMassCO' | 'nominalCellVoltage' | 'coDoseDenominator' | 'woodIgnition'
  | 'painFlux' | 'noPainFlux' | 'burnFlux' | 'reachMin' | 'nearRefVolume' | 'nearFactorMax' | 'outdoorVolume'
  | 'outdoorAch' | 'windSpeed' | 'tempDiff' | 'closedAch' | 'continuousFactor' | 'seasonDays' | 'openSpread';

export interface AeglTables {
  /** exposure durations of the tables, minutes, rising */
  readonly durationsMin: readonly number[];
  /** ppm at each duration, by level */
  readonly HF: Readonly<Record<'1' | '2' | '3', readonly number[]>>;
  readonly CO: Readonly<Record<'2' | '3', readonly number[]>>;
  readonly rule: string;
  readonly kind: Kind;
  readonly source: string;
}

/** State of charge, per cent, of a cell at rest, linear between the points. */
export interface RestVoltage { readonly points: readonly { readonly volts: number; readonly charge: number }[]; readonly rule: string; readonly kind: Kind; readonly source: string }

/** Air changes an hour for somebody who knows the windows, not the figure; the option of the same id sets `mid`. */
export interface AirClass { readonly id: string; readonly title: string; readonly low: number; readonly mid: number; readonly high: number; readonly unit: string; readonly kind: Kind; readonly source: string }

import type { AmpereHours, Amperes, Minutes } from '@/lib/units/quantity';

/**
 * Charge current that would fill a pack in an hour, 1C: as many amperes as the pack has ampere-hours.
 * Common practice: no more than this unless the label allows it (REFERENCES F.1, READ-P).
 */
export function chargeCurrentAt1C(capacity: AmpereHours): Amperes {
  return capacity as number as Amperes;
}

/** Pins of the balance plug: one for each cell and one more (REFERENCES F.1, MEM H). */
export function balancePins(cellsInSeries: number): number { return cellsInSeries + 1; }

export interface ChargingRun {
  readonly packs: number;
  /** charger outlets in use at the same time, 1 or more */
  readonly outlets: number;
  readonly capacity: AmpereHours;
  /** above 0 */
  readonly current: Amperes;
}

/**
 * Least time to charge packs one after another on the outlets there are, from empty:
 * rounds · capacity / current. Longer in truth, because the current falls near the end; shorter for packs
 * that come down half full.
 */
export function seriesChargeTime(run: ChargingRun): Minutes {
  const rounds = Math.ceil(run.packs / run.outlets);
  return (rounds * (run.capacity / run.current) * 60) as Minutes;
}

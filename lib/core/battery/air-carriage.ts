import type { WattHours } from '@/lib/units/quantity';
import type { BatterySummary } from '@/lib/core/result';
import { AIR_CARRIAGE } from '@/lib/reference/air-carriage';

/** Spares a person may carry with the airline's approval, sources with `AIR_CARRIAGE`. */
export const SPARES_WITH_APPROVAL = AIR_CARRIAGE.sparesWithApproval;

export type AirClass = BatterySummary['airClass'];

/** What may be done with a spare pack on a passenger flight. */
export interface AirCarriage {
  readonly airClass: AirClass;
  readonly allowed: boolean;
  /** most spares for one person; null where no number is set or none may fly */
  readonly spares: number | null;
  readonly why: string;
}

/**
 * Class of a sound pack as cabin baggage by its energy: up to 100 Wh carry-on, up to 160 Wh with the
 * airline's approval, above that forbidden. Sources with `AIR_CARRIAGE`.
 * @param energy rated energy, 0 or more
 */
export function airClass(energy: WattHours): AirClass {
  if (energy <= AIR_CARRIAGE.freeUpTo) return 'carry-on';
  return energy <= AIR_CARRIAGE.approvalUpTo ? 'approval' : 'forbidden';
}

/** Whether a pack may fly, with the reason in words. A damaged pack never flies, whatever its energy. */
export function airCarriage(energy: WattHours, damaged: boolean): AirCarriage {
  if (damaged) return { airClass: 'forbidden', allowed: false, spares: null, why: 'a damaged pack never flies' };
  const sort = airClass(energy);
  switch (sort) {
    case 'carry-on': return { airClass: sort, allowed: true, spares: null, why: 'in the cabin, contacts covered, never in hold baggage' };
    case 'approval': return { airClass: sort, allowed: true, spares: SPARES_WITH_APPROVAL, why: 'in the cabin, only when the airline has agreed' };
    case 'forbidden': return { airClass: sort, allowed: false, spares: null, why: `more than ${AIR_CARRIAGE.approvalUpTo} Wh: not as baggage` };
  }
}

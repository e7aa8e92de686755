import type { Content } from '@/lib/content/model';
import type { ActionResult } from '@/lib/core/result';
import { hours } from '@/lib/wording/measures';

/** "2 h, petty cash"; money is left out when none is needed. */
export function effortText(action: Pick<ActionResult, 'hours' | 'moneyBand'>, content: Content): string {
  const band = content.moneyBands.find(({ band: number }) => number === action.moneyBand);
  return band === undefined || band.points === 0 ? `${hours(action.hours)}, no money` : `${hours(action.hours)}, ${band.title}`;
}

import { z } from 'zod';
import { line } from '@/lib/forms/fields';
import { typedNumber } from '@/lib/questionnaire/number-field';
import { type Decided, refusedFor } from './decided';
import { labelSeries, MOST_COPIES } from './label-series';
import type { Pack, PackDetails } from './pack';

/** How often a pack of the register is entered again: ten of one kind are typed once. */
export const CopyPackSchema = z.object({
  packId: line('Choose a pack'),
  copies: typedNumber('Enter how many more there are', { least: 1, most: MOST_COPIES, unit: 'packs', whole: true }),
});

/**
 * Decides about copies of a pack: labels numbered on, everything of its kind taken over. What belongs to the single pack
 * (charges, first use, notes) is not.
 */
export function copyPack(pack: Pack, copies: number, taken: readonly string[]): Decided<readonly PackDetails[]> {
  const labels = labelSeries(pack.label, copies, taken);
  if (!labels.ok) return refusedFor('copies', labels.reason);
  const change = labels.value.map((label): PackDetails => ({ ...detailsOf(pack), label, firstUsedOn: null, chargesBefore: null, notes: null }));
  return { ok: true, change, events: [] };
}

/** The details of a pack without what the register adds. */
export function detailsOf(pack: PackDetails): PackDetails {
  const { label, series, parallel, capacityMah, cRating, printedWh, cellType, connector, maker, seller, batch, secondHand, boughtOn, firstUsedOn, chargesBefore, areaId, place, notes } = pack;
  return { label, series, parallel, capacityMah, cRating, printedWh, cellType, connector, maker, seller, batch, secondHand, boughtOn, firstUsedOn, chargesBefore, areaId, place, notes };
}

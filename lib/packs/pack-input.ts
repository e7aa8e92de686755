import { z } from 'zod';
import { packEnergy } from '@/lib/core/battery/pack-energy';
import { optionalDay } from '@/lib/forms/day-field';
import { line, oneOf, optionalLine, optionalText } from '@/lib/forms/fields';
import { optionalTypedNumber, typedNumber } from '@/lib/questionnaire/number-field';
import type { AmpereHours, Volts } from '@/lib/units/quantity';
import { CELL_TYPES } from './cell-types';
import { PACK_RANGES } from './pack-ranges';

const SECOND_HAND = ['no', 'yes', 'not sure'] as const;
const LONGEST_LABEL = 24;

/** What is asked about a pack. The same for the form, for a copy and for a line of a table. */
export const PackInputSchema = z.object({
  label: line('Enter the label that is written on the pack', LONGEST_LABEL).transform((label) => label.replace(/\s+/gu, ' ')),
  series: typedNumber('Enter the number of cells: 4 when the label says 4S', PACK_RANGES.series),
  parallel: optionalTypedNumber(PACK_RANGES.parallel).transform((rows) => rows ?? 1),
  capacityMah: typedNumber('Enter the capacity in mAh, from the label', PACK_RANGES.capacityMah),
  cRating: optionalTypedNumber(PACK_RANGES.cRating),
  printedWh: optionalTypedNumber(PACK_RANGES.printedWh),
  cellType: oneOf(CELL_TYPES, 'Choose the full voltage of a cell, from the label'),
  connector: optionalLine(40),
  maker: optionalLine(80),
  seller: optionalLine(80),
  batch: optionalLine(40),
  secondHand: oneOf(SECOND_HAND, 'Say whether it was bought new').transform((answer) => (answer === 'not sure' ? null : answer === 'yes')),
  boughtOn: optionalDay(),
  firstUsedOn: optionalDay(),
  chargesBefore: optionalTypedNumber(PACK_RANGES.chargesBefore),
  areaId: optionalLine(),
  place: optionalLine(80),
  notes: optionalText(),
}).superRefine((pack, context) => {
  if (pack.boughtOn !== null && pack.firstUsedOn !== null && pack.firstUsedOn < pack.boughtOn) {
    context.addIssue({ code: 'custom', path: ['firstUsedOn'], message: 'It was first used before it was bought: look at the two dates', input: pack.firstUsedOn });
  }
  const wrong = energyFault(pack);
  if (wrong !== null) context.addIssue({ code: 'custom', path: ['printedWh'], message: wrong, input: pack.printedWh });
});

export type PackInput = z.output<typeof PackInputSchema>;

/** A printed energy this far from the computed one is a slip of the keyboard, our judgement: labels round, and nominal voltages differ by a few per cent. */
const PLAUSIBLE = { least: 0.7, most: 1.4 } as const;
/** Of a usual cell; good enough to find a slip. */
const NOMINAL = 3.7 as Volts;

interface EnergyOnLabel { readonly series: number; readonly parallel: number; readonly capacityMah: number; readonly printedWh: number | null; readonly cellType: string }

function energyFault({ series, parallel, capacityMah, printedWh, cellType }: EnergyOnLabel): string | null {
  if (printedWh === null || cellType === 'other-chemistry') return null;
  const computed = packEnergy({ cellsInSeries: series, rowsInParallel: parallel, capacity: (capacityMah / 1000) as AmpereHours, printed: null }, NOMINAL);
  const ratio = printedWh / computed;
  if (ratio >= PLAUSIBLE.least && ratio <= PLAUSIBLE.most) return null;
  return `${series * parallel} cells of ${capacityMah} mAh hold about ${computed.toFixed(1)} Wh: look at the label again`;
}

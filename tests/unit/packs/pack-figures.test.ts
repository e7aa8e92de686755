import { describe, expect, it } from 'vitest';
import { CELL_TYPES, cellTypeFacts, type CellTypeFacts } from '@/lib/packs/cell-types';
import { labelSeries } from '@/lib/packs/label-series';
import { packFigures } from '@/lib/packs/pack-figures';
import { PackInputSchema } from '@/lib/packs/pack-input';
import { expectWithin } from '@/tests/support/expect-within';
import { secondLimits } from '@/tests/support/second-pack-limits';

const FACTS = cellTypeFacts(secondLimits);
const cell = (id: string): CellTypeFacts => {
  const found = FACTS.find((facts) => facts.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const label = { series: 4, parallel: 1, capacityMah: 850, printedWh: null };

describe('what follows from a label', () => {
  it('knows the kinds of cell of the content, and no other', () => { expect(FACTS.map(({ id }) => id)).toEqual([...CELL_TYPES]); });

  it('is energy, charge current and whole-pack voltages', () => {
    const figures = packFigures(label, cell('full-4-20'));
    // Computed: 4 · 3.7 V · 0.85 Ah; 1C = 0.85 A; 4 · 4.20 V and 4 · 3.80 V. Nominal voltage common practice (REFERENCES F.1).
    expectWithin(figures.energyWh ?? 0, 12.58, { abs: 1e-9 });
    expectWithin(figures.chargeAt1C, 0.85, { abs: 1e-9 });
    expectWithin(figures.fullV ?? 0, 16.8, { abs: 1e-9 });
    expectWithin(figures.storageV ?? 0, 15.2, { abs: 1e-9 });
    expect(figures).toMatchObject({ energyFrom: 'computed', airClass: 'carry-on' });
  });

  it('takes the printed energy where there is one, and the figures of its own kind of cell', () => {
    expect(packFigures({ ...label, printedWh: 12.9 }, cell('full-4-20'))).toMatchObject({ energyWh: 12.9, energyFrom: 'printed' });
    // Computed: 4 · 3.8 V · 0.85 Ah and 4 · 4.35 V (from memory, as the content says).
    expectWithin(packFigures(label, cell('full-4-35')).energyWh ?? 0, 12.92, { abs: 1e-9 });
    expectWithin(packFigures(label, cell('full-4-35')).fullV ?? 0, 17.4, { abs: 1e-9 });
  });

  it('counts rows side by side in energy and in current, not in voltage', () => {
    const figures = packFigures({ ...label, parallel: 2 }, cell('full-4-20'));
    expectWithin(figures.energyWh ?? 0, 25.16, { abs: 1e-9 });
    expectWithin(figures.chargeAt1C, 1.7, { abs: 1e-9 });
    expectWithin(figures.fullV ?? 0, 16.8, { abs: 1e-9 });
  });

  it('makes up nothing for cells that are out of scope', () => {
    expect(packFigures(label, cell('other-chemistry'))).toMatchObject({ energyWh: null, energyFrom: null, airClass: null, fullV: null });
    expect(packFigures({ ...label, printedWh: 10 }, cell('full-other'))).toMatchObject({ energyWh: 10, energyFrom: 'printed' });
    expect(cell('other-chemistry').caution).toContain('Out of scope');
  });
});

describe('labels of copies', () => {
  it.each([
    ['W-09', 3, [], ['W-10', 'W-11', 'W-12']],
    ['W-09', 3, ['w-10', 'W-12'], ['W-11', 'W-13', 'W-14']],
    ['Blue', 2, [], ['Blue 2', 'Blue 3']],
    ['4S', 1, [], ['4S 2']],
    ['007', 1, [], ['008']],
    ['99', 2, [], ['100', '101']],
  ])('go on from %s', (from, copies, taken, expected) => { expect(labelSeries(from, copies, taken)).toEqual({ ok: true, value: expected }); });

  it.each([0, 61, 1.5, Number.NaN])('are refused for %s copies', (copies) => { expect(labelSeries('W-01', copies, []).ok).toBe(false); });
});

describe('what is typed about a pack', () => {
  const typed = { label: ' W-11 ', series: '4', capacityMah: '850', cellType: 'full-4-20', secondHand: 'no' };

  it('is read, and what was left empty is not known', () => {
    expect(PackInputSchema.parse({ ...typed, printedWh: '12,6', cRating: '' })).toMatchObject({ label: 'W-11', series: 4, parallel: 1, printedWh: 12.6, cRating: null, boughtOn: null, chargesBefore: null });
  });

  it.each([
    [{ series: '9' }, 'series', 'Enter a number from 1 to 8 cells'],
    [{ series: '4.5' }, 'series', 'Enter a whole number'],
    [{ printedWh: '126' }, 'printedWh', '4 cells of 850 mAh hold about 12.6 Wh: look at the label again'],
    [{ boughtOn: '2026-02-30' }, 'boughtOn', 'Write the date as year, month and day, such as 2026-11-25'],
    [{ boughtOn: '2026-03-01', firstUsedOn: '2026-02-01' }, 'firstUsedOn', 'It was first used before it was bought: look at the two dates'],
    [{ cellType: 'full-5' }, 'cellType', 'Choose the full voltage of a cell, from the label'],
    [{ secondHand: undefined }, 'secondHand', 'Say whether it was bought new'],
  ])('is refused with %j', (wrong, field, message) => {
    const parsed = PackInputSchema.safeParse({ ...typed, ...wrong });
    expect(parsed.error?.issues.map((issue) => [issue.path[0], issue.message])).toEqual([[field, message]]);
  });
});

import { describe, expect, it } from 'vitest';
import { airCarriage, airClass } from '@/lib/core/battery/air-carriage';
import { balancePins, chargeCurrentAt1C, seriesChargeTime } from '@/lib/core/battery/charging';
import { packEnergy } from '@/lib/core/battery/pack-energy';
import { batterySummary } from '@/lib/core/battery/summary';
import type { AmpereHours, Amperes, Volts, WattHours } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';
import { expectedOf, REFERENCE_VENUES } from '@/tests/support/reference-venues';

const wh = (value: number): WattHours => of<WattHours>(value);
const ah = (value: number): AmpereHours => of<AmpereHours>(value);
const cell = of<Volts>(model.nominalCellVoltage);

describe('packEnergy', () => {
  // CK-24: first pack PHMSA 14-0218 (inputs READ-P), the others CALC: 7.4, 11.1, 14.8 and 22.2 V
  it.each([[2, 1.1, 8.14], [3, 0.45, 4.995], [4, 1.3, 19.24], [6, 1.5, 33.3]])('of %iS %f Ah is %f Wh, which may fly', (cellsInSeries, capacity, expected) => {
    const energy = packEnergy({ cellsInSeries, rowsInParallel: 1, capacity: ah(capacity), printed: null }, cell);
    expectWithin(energy, expected, { abs: 1e-9 });
    expect(airClass(energy)).toBe('carry-on');
  });
  it('counts rows side by side', () => {
    expectWithin(packEnergy({ cellsInSeries: 4, rowsInParallel: 2, capacity: ah(0.85), printed: null }, cell), 25.16, { abs: 1e-9 });
  });
  it('is what the label prints, where it prints anything', () => {
    expect(packEnergy({ cellsInSeries: 4, rowsInParallel: 1, capacity: ah(0.85), printed: wh(12.6) }, cell)).toBe(12.6);
  });
});

describe('charging', () => {
  it('at 1C takes as many amperes as ampere-hours and fills a pack in an hour', () => {
    const current = chargeCurrentAt1C(ah(0.85));
    expect(current).toBe(0.85);
    expectWithin(seriesChargeTime({ packs: 1, outlets: 1, capacity: ah(0.85), current }), 60, { rel: 1e-15 });
  });
  it('goes in rounds where packs outnumber outlets', () => {
    const run = { capacity: ah(0.85), current: of<Amperes>(1.7) };
    expect([4, 5, 8, 9].map((packs) => seriesChargeTime({ packs, outlets: 4, ...run }))).toEqual([30, 60, 60, 90]);
  });
  // REFERENCES F.1 (MEM H): 3S 4 pins, 6S 7
  it('needs a plug with one pin more than cells', () => expect([3, 6].map(balancePins)).toEqual([4, 7]));
});

describe('air carriage', () => {
  // CK-50: 100 Wh READ-P, 101 to 160 READ-C, above 160 MEM
  it.each([[100, 'carry-on'], [100.1, 'approval'], [160, 'approval'], [160.1, 'forbidden']] as const)('of %f Wh is %s', (energy, expected) => {
    expect(airClass(wh(energy))).toBe(expected);
  });
  it('lets two spares with approval, and any number of small ones', () => {
    expect(airCarriage(wh(120), false)).toMatchObject({ allowed: true, spares: 2 });
    expect(airCarriage(wh(12.58), false)).toMatchObject({ allowed: true, spares: null });
    expect(airCarriage(wh(161), false).allowed).toBe(false);
  });
  it.each([5, 100, 150, 200])('refuses a damaged pack of %i Wh', (energy) => {
    expect(airCarriage(wh(energy), true)).toMatchObject({ allowed: false, airClass: 'forbidden' });
  });
});

describe('batterySummary', () => {
  it.each(REFERENCE_VENUES)('of %s agrees with the independent implementation', (venue) => {
    const expected = expectedOf(venue);
    const summary = batterySummary({ cells: 4, capacityMah: 850, packWh: 4 * 0.85 * 3.7, packs: 24, packsStored: 24 });
    expectWithin(summary.packWh, expected.battery.packWh, { rel: 1e-12 });
    expectWithin(summary.totalWh, expected.battery.totalWh, { rel: 1e-12 });
    expectWithin(summary.storedWh, expected.derived.storedWh, { rel: 1e-12 });
    expect(summary).toMatchObject({ airClass: expected.battery.airClass, currentAt1C: 0.85, balancePins: 5 });
  });
  it('counts what is in one store apart from what the team owns', () => {
    const summary = batterySummary({ cells: 4, capacityMah: 1000, packWh: 14.8, packs: 10, packsStored: 4 });
    expectWithin(summary.totalWh, 148, { rel: 1e-14 });
    expectWithin(summary.storedWh, 59.2, { rel: 1e-14 });
  });
});

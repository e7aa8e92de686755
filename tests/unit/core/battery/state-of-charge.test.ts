import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { chargeBand } from '@/lib/core/battery/charge-band';
import { stateOfCharge } from '@/lib/core/battery/state-of-charge';
import { of, type Volts } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';

const volts = (value: number): Volts => of<Volts>(value);
function charge(value: number): number {
  const result = stateOfCharge(volts(value), volts(4.2));
  if (!result.ok) throw new Error(result.reason);
  return result.value;
}

describe('stateOfCharge', () => {
  // CK-53 (READ-S)
  it.each([[4.2, 100], [3.84, 50], [3.8, 40], [3.27, 0]])('at %f V is %f %%', (at, expected) => expectWithin(charge(at), expected, { abs: 1e-9 }));
  it('is half way between two points in the middle of them', () => expectWithin(charge((3.61 + 3.27) / 2), 2.5, { abs: 1e-9 }));
  it('is empty below the table and full above it', () => expect([charge(3.0), charge(3.1), charge(4.22), charge(4.25)]).toEqual([0, 0, 100, 100]));
  it.each([2.99, 0, -1, 4.26, 8.4])('is not named for a cell at %f V', (at) => {
    const result = stateOfCharge(volts(at), volts(4.2));
    expect(result.ok ? '' : result.reason).toContain('damaged or misread');
  });
  it('has no table for cells that are full at another voltage', () => {
    const result = stateOfCharge(volts(4), volts(4.35));
    expect(result.ok ? '' : result.reason).toContain('4.35 V');
  });
  it('never falls as the voltage rises', () => {
    const sound = fc.double({ min: 3, max: 4.25, noNaN: true });
    fc.assert(fc.property(sound, sound, (one, other) => {
      expect(charge(Math.max(one, other))).toBeGreaterThanOrEqual(charge(Math.min(one, other)));
    }));
  });
});

describe('chargeBand', () => {
  // limits of the content: common practice (REFERENCES F.1); a limit counts as its rule says
  it.each([
    [2.99, 'too low'], [3, 'low'], [3.29, 'low'], [3.3, 'below storage'], [3.69, 'below storage'], [3.7, 'storage'], [3.8, 'storage'],
    [3.88, 'storage'], [3.89, 'above storage'], [4.19, 'above storage'], [4.2, 'full'], [4.25, 'full'], [4.26, 'too high'],
  ])('of a cell at %f V is %s', (at, band) => expect(chargeBand(edition1.packLimits, volts(at))).toBe(band));
  it('needs the voltage rules of the content', () => {
    expect(() => chargeBand({ ...edition1.packLimits, rules: [] }, volts(3.8))).toThrow('cell-too-low');
  });
});

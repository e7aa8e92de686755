import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { clearingTime, purgeTime } from '@/lib/core/smoke/clearing';
import { concentrationPpm, peakPpm, type RoomGas } from '@/lib/core/smoke/room-gas';
import type { AirChangesPerHour, CubicMetres, Milligrams, PartsPerMillion, Seconds } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';

const ppm = (value: number): PartsPerMillion => of<PartsPerMillion>(value);
const purge = (removed: number, ach: number): number => purgeTime(ppm(1), ppm(1 - removed), of<AirChangesPerHour>(ach));

describe('purgeTime', () => {
  // CK-01: CDC 2003, Appendix B, Table B.1 (READ-P), all rows. One government copy misprints 13 per hour
  it.each([[2, 138, 207], [4, 69, 104], [6, 46, 69], [8, 35, 52], [10, 28, 41], [12, 23, 35], [15, 18, 28], [20, 14, 21], [50, 6, 8]])(
    'is the minutes of the CDC table at %i air changes, 99 %% %i and 99.9 %% %i',
    (ach, to99, to999) => expect([Math.round(purge(0.99, ach)), Math.round(purge(0.999, ach))]).toEqual([to99, to999]),
  );
  // CK-02: MMWR 43(RR-13) 1994, Table S3-1 (READ-P in a government copy)
  it.each([[1, 138], [2, 69], [3, 46], [5, 28], [7, 20]])('removes 90 %% at %i air changes in %i minutes', (ach, minutes) => {
    expect(Math.round(purge(0.9, ach))).toBe(minutes);
  });
  // CK-35 (CALC)
  it('takes 23.67 min from 78.36 to 24 ppm at 3 air changes, and 87.2 min to 1 ppm', () => {
    const ach = of<AirChangesPerHour>(3);
    expectWithin(purgeTime(ppm(78.36), ppm(24), ach), 23.67, { abs: 0.01 });
    expectWithin(purgeTime(ppm(78.36), ppm(1), ach), 87.2, { abs: 0.1 });
  });
  it('never ends without air exchange', () => {
    expect(() => purgeTime(ppm(10), ppm(1), of<AirChangesPerHour>(0))).toThrow('never clears');
  });
});

describe('clearingTime', () => {
  const room = (mass: number, airChanges: number): RoomGas => ({
    gas: 'HF', mass: of<Milligrams>(mass), release: of<Seconds>(60), volume: of<CubicMetres>(60), airChanges: of<AirChangesPerHour>(airChanges),
  });
  it('is 0 when the smoke never passes the re-entry value', () => {
    expect(peakPpm(model, room(40, 1))).toBeLessThan(1);
    expect(clearingTime(model, room(40, 1))).toBe(0);
  });
  it('is the moment at which the room is down to the re-entry value, and shorter with more air', () => {
    fc.assert(fc.property(fc.double({ min: 100, max: 1e6, noNaN: true }), fc.double({ min: 0.05, max: 60, noNaN: true }), (mass, ach) => {
      const dirty = room(mass, ach);
      const clear = clearingTime(model, dirty);
      if (peakPpm(model, dirty) > model.reentry.HF) expectWithin(concentrationPpm(model, dirty, of<Seconds>(clear * 60)), model.reentry.HF, { rel: 1e-9 });
      expect(clearingTime(model, room(mass, ach * 1.5))).toBeLessThanOrEqual(clear);
      expect(clearingTime(model, room(mass * 1.5, ach))).toBeGreaterThanOrEqual(clear);
    }));
  });
});

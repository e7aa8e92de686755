import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aeglAt } from '@/lib/core/smoke/aegl-curve';
import { concentrationPpm, type RoomGas } from '@/lib/core/smoke/room-gas';
import { secondsToAegl } from '@/lib/core/smoke/time-to-aegl';
import type { AirChangesPerHour, CubicMetres, Milligrams, Minutes, Seconds } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';

const curves = [model.aegl.HF['2'], model.aegl.HF['3']] as const;
const room = (mass: number, release: number, airChanges: number): RoomGas => ({
  gas: 'HF', mass: of<Milligrams>(mass), release: of<Seconds>(release), volume: of<CubicMetres>(60), airChanges: of<AirChangesPerHour>(airChanges),
});
const excess = (any: RoomGas, curve: (typeof curves)[number], t: number): number =>
  concentrationPpm(model, any, of<Seconds>(t)) / aeglAt(curve, of<Minutes>(t / 60)) - 1;

describe('secondsToAegl', () => {
  it('is the closed form while the release lasts and the level is held', () => {
    const smoky = room(40_000, 300, 2);
    const k = 2 / 3600;
    const perMg = model.molarVolume / model.molarMassHF / 60 / 300;
    // 95 = mass · perMg · (1 − e^(−kt)) / k
    const expected = -Math.log1p((-95 * k) / (40_000 * perMg)) / k;
    expectWithin(secondsToAegl(model, model.aegl.HF['2'], smoky) ?? Number.NaN, expected, { rel: 1e-12 });
  });
  it('finds a level that is reached only because people have stayed so long', () => {
    // about 50 ppm after the release: AEGL-2 is 95 at ten minutes and 34 at thirty
    const t = secondsToAegl(model, model.aegl.HF['2'], room(2500, 60, 0.3));
    expect(t).toBeGreaterThan(600);
    expect(t).toBeLessThan(1800);
  });
  it('is null when fresh air wins', () => expect(secondsToAegl(model, model.aegl.HF['2'], room(2500, 60, 30))).toBeNull());
  it('is null when there is next to no smoke, in a room without any air exchange too', () => {
    expect(secondsToAegl(model, model.aegl.HF['2'], room(10, 60, 0))).toBeNull();
  });
  it('looks as far as eight hours and no further', () => {
    // AEGL-2 falls to 12 ppm at four hours and stays there
    const perMg = model.molarVolume / model.molarMassHF / 60;
    const t = secondsToAegl(model, model.aegl.HF['2'], room(12.001 / perMg, 60, 0)) ?? Number.NaN;
    expectWithin(t, 4 * 3600, { rel: 1e-3 });
    // a release that would reach 12 ppm only after nine hours
    expect(secondsToAegl(model, model.aegl.HF['2'], room(12 / perMg, 9 * 3600, 0))).toBeNull();
  });

  it('is the first moment at which the level is reached: there it is equal, and never before', () => {
    const any = fc.record({
      mass: fc.double({ min: 100, max: 100_000, noNaN: true }), release: fc.double({ min: 20, max: 8000, noNaN: true }), airChanges: fc.double({ min: 0, max: 20, noNaN: true }),
    });
    fc.assert(fc.property(any, fc.constantFrom(...curves), ({ mass, release, airChanges }, curve) => {
      const smoky = room(mass, release, airChanges);
      const t = secondsToAegl(model, curve, smoky);
      if (t !== null) expectWithin(excess(smoky, curve, t), 0, { abs: 1e-10 });
      const until = t ?? 8 * 3600;
      for (let step = 1; step <= 400; step += 1) expect(excess(smoky, curve, (until * step) / 401)).toBeLessThan(1e-9);
    }), { numRuns: 200 });
  });
  it('comes no later with more smoke, and level 3 no sooner than level 2', () => {
    fc.assert(fc.property(fc.double({ min: 100, max: 100_000, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }), (mass, airChanges) => {
      const at = (curve: (typeof curves)[number], m: number): number => secondsToAegl(model, curve, room(m, 120, airChanges)) ?? Number.POSITIVE_INFINITY;
      expect(at(curves[0], mass * 1.5)).toBeLessThanOrEqual(at(curves[0], mass) * (1 + 1e-12));
      expect(at(curves[1], mass)).toBeGreaterThanOrEqual(at(curves[0], mass) * (1 - 1e-12));
    }));
  });
});

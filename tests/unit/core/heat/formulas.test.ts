import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flameHeight } from '@/lib/core/heat/flame-height';
import { heatRelease, packsAtOnce } from '@/lib/core/heat/heat-release';
import { distanceOfFlux, pointSourceFlux } from '@/lib/core/heat/point-source';
import type { Kilowatts, KilowattsPerSquareMetre, Metres } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';

const flux = (heat: number, fraction: number, distance: number): number => pointSourceFlux(of<Kilowatts>(heat), fraction, of<Metres>(distance));
const distance = (heat: number, fraction: number, q: number): number => distanceOfFlux(of<Kilowatts>(heat), fraction, of<KilowattsPerSquareMetre>(q));

describe('pointSourceFlux', () => {
  // CK-07: NIST CFAST verification, target_2 (READ-P): 50 kW radiated
  it('is 3.978877 and 0.994719 kW/m² at 1 and 2 m from 50 kW radiated', () => {
    expectWithin(flux(50, 1, 1), 3.978877, { abs: 1e-4 });
    expectWithin(flux(50, 1, 2), 0.994719, { abs: 1e-4 });
  });
  // CK-39 (CALC)
  it.each([[0.3, 6.189], [0.5, 2.228], [1, 0.557]])('at %f m from 20 kW of which 0.35 is radiated is %f', (at, expected) => {
    expectWithin(flux(20, 0.35, at), expected, { abs: 1e-3 });
  });
});

describe('distanceOfFlux', () => {
  // CK-39 (CALC)
  it('is 0.472 m for 2.5 and 0.211 m for 12.5 kW/m² from 20 kW', () => {
    expectWithin(distance(20, 0.35, 2.5), 0.472, { abs: 1e-3 });
    expectWithin(distance(20, 0.35, 12.5), 0.211, { abs: 1e-3 });
  });
  it('undoes the flux', () => {
    const positive = fc.double({ min: 0.01, max: 300, noNaN: true });
    fc.assert(fc.property(positive, positive, (heat, at) => expectWithin(distance(heat, 0.35, flux(heat, 0.35, at)), at, { rel: 1e-13 })));
  });
});

describe('flameHeight', () => {
  const height = (heat: number, base: number): number => flameHeight(of<Kilowatts>(heat), of<Metres>(base));
  // CK-40 (CALC), the 0.235 form; the dimensionless form would give 1.111 m for the first
  it('is 1.177 m for 100 kW on 0.3 m and 0.575 m for 20 kW on 0.2 m', () => {
    expectWithin(height(100, 0.3), 1.177, { abs: 1e-3 });
    expectWithin(height(20, 0.2), 0.575, { abs: 1e-3 });
  });
  it('is nothing for a fire too weak for its base', () => expect(height(1, 1)).toBe(0));
});

describe('heatRelease', () => {
  it('counts three packs at once at most, however many burn in turn', () => {
    expect([1, 2, 3, 8].map((packs) => packsAtOnce(model, packs))).toEqual([1, 2, 3, 3]);
    expectWithin(heatRelease(model, 8, 12.58, 300), 11.322, { rel: 1e-14 });
  });
  // REFERENCES A.2, Larsson 2014 (MEM M): 19.24 Wh give 2 to 9 kW
  it('is 2 to 9 kW for 19.24 Wh', () => {
    expectWithin(heatRelease(model, 1, 19.24, model.peakHeatRelease.low), 2, { abs: 0.5 });
    expectWithin(heatRelease(model, 1, 19.24, model.peakHeatRelease.high), 9, { abs: 0.5 });
  });
});

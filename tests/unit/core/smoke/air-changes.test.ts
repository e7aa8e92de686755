import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirSupply, airChangesOf, chargingAirChanges } from '@/lib/core/smoke/air-changes';
import { singleSidedFlow } from '@/lib/core/smoke/gids-phaff';
import type { CubicMetres, CubicMetresPerHour, Kelvin, Metres, MetresPerSecond, SquareMetres } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';

const room: AirSupply = { mode: 'closed', volumeM3: 180, measuredAch: 2.5, flowM3PerHour: 540, openingM2: 0.4, openingHeightM: 1 };

describe('singleSidedFlow', () => {
  it('is what is left in still air of one temperature: ½·A·√0.01', () => {
    expectWithin(singleSidedFlow(of<SquareMetres>(2), of<Metres>(1), of<MetresPerSecond>(0), of<Kelvin>(0)), 0.1, { rel: 1e-15 });
  });
  it('grows with wind, warmth and height', () => {
    const flow = (h: number, u: number, dt: number): number => singleSidedFlow(of<SquareMetres>(1), of<Metres>(h), of<MetresPerSecond>(u), of<Kelvin>(dt));
    expect(flow(1, 4, 5)).toBeGreaterThan(flow(1, 1, 5));
    expect(flow(1, 1, 12)).toBeGreaterThan(flow(1, 1, 5));
    expect(flow(2, 1, 5)).toBeGreaterThan(flow(1, 1, 5));
  });
});

describe('chargingAirChanges', () => {
  // amendment A33: value of the independent implementation for the classroom
  it('gives the classroom with an open window 0.675 per hour', () => {
    expectWithin(chargingAirChanges(model, { ...room, mode: 'openings' }), 0.6752777206453653, { rel: 1e-12 });
  });
  it('takes a measured figure as it stands, also below that of a closed room', () => {
    expect(chargingAirChanges(model, { ...room, mode: 'measured', measuredAch: 0.05 })).toBe(0.05);
  });
  it('divides a fan by the volume', () => expect(chargingAirChanges(model, { ...room, mode: 'mechanical' })).toBe(3));
  it('takes a closed room at its own figure', () => expect(chargingAirChanges(model, room)).toBe(model.closedAch));
  it('never counts a small opening or an unknown fan below a closed room', () => {
    expect(chargingAirChanges(model, { ...room, mode: 'openings', openingM2: 0 })).toBe(model.closedAch);
    expect(chargingAirChanges(model, { ...room, mode: 'mechanical', flowM3PerHour: 0 })).toBe(model.closedAch);
  });
  it('is finite and above nothing for every room', () => {
    const size = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(fc.property(fc.constantFrom('mechanical', 'openings', 'closed'), fc.double({ min: 4, max: 50_000, noNaN: true }), size(100_000), size(50), size(6), (mode, volumeM3, flowM3PerHour, openingM2, openingHeightM) => {
      const changes = chargingAirChanges(model, { ...room, mode, volumeM3, flowM3PerHour, openingM2, openingHeightM });
      expect(changes).toBeGreaterThanOrEqual(model.closedAch);
      expect(Number.isFinite(changes)).toBe(true);
    }));
  });
  it('knows no other source of air', () => expect(() => chargingAirChanges(model, { ...room, mode: 'hope' })).toThrow('hope'));
});

describe('airChangesOf', () => {
  // CK-54: gym of 30 × 20 × 8 m with 42 people, ASHRAE rates READ-S, result CALC: (42·10 + 600·0.9) L/s
  it('makes 960 L/s in a gym of 4800 m³ 0.72 per hour', () => {
    const flow = of<CubicMetresPerHour>((42 * 10 + 600 * 0.9) * 3.6);
    expectWithin(airChangesOf(flow, of<CubicMetres>(30 * 20 * 8)), 0.72, { abs: 1e-9 });
  });
});

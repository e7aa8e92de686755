import { describe, expect, it } from 'vitest';
import { nearFieldFactor, nearFieldPpm } from '@/lib/core/smoke/near-field';
import { concentrationPpm, roomGases } from '@/lib/core/smoke/room-gas';
import { yieldsOf } from '@/lib/core/smoke/screening';
import type { CubicMetres, Seconds } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';

const factor = (volume: number): number => nearFieldFactor(model, of<CubicMetres>(volume));

describe('nearFieldFactor', () => {
  it('is 1 up to 20 m³, 3 in 180 m³ and never more than 10 (amendment A18)', () => {
    expect([1, 20, 180, 2000, 100_000].map(factor)).toEqual([1, 1, 3, 10, 10]);
  });
});

describe('nearFieldPpm', () => {
  const { HF } = roomGases(model, { packs: 8, packEnergyWh: 12.58, volumeM3: 180, airChanges: 0.3 }, yieldsOf(model, 'mid'));
  it('is three times the room of 180 m³ when people step away, after a minute at the latest', () => {
    expectWithin(nearFieldPpm(model, HF, of<Seconds>(600)), 3 * concentrationPpm(model, HF, of<Seconds>(60)), { rel: 1e-15 });
    expectWithin(nearFieldPpm(model, HF, of<Seconds>(20)), 3 * concentrationPpm(model, HF, of<Seconds>(20)), { rel: 1e-15 });
  });
});

import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { physicsModel } from '@/lib/core/physics-model';

describe('physicsModel', () => {
  it('holds every physical number of the content under its id', () => {
    const model = physicsModel(edition1);
    for (const { id, low, mid, high } of edition1.physics) expect(model[id]).toEqual({ low, mid, high });
    // two constants of the first edition are read by no model
    for (const { id, value } of edition1.constants) if (id !== 'noPainFlux' && id !== 'seasonDays') expect(model[id]).toBe(value);
  });
  it('refuses content without one of them', () => {
    expect(() => physicsModel({ ...edition1, constants: edition1.constants.filter(({ id }) => id !== 'painFlux') })).toThrow('painFlux');
    expect(() => physicsModel({ ...edition1, physics: edition1.physics.filter(({ id }) => id !== 'hfYield') })).toThrow('hfYield');
  });
});

import { describe, expect, it } from 'vitest';
import { knownSets, stepTo } from '@/app/try/_result/known-sets';
import type { BestSet } from '@/lib/core/result';

const set = (budget: number, cut = 0): BestSet => ({ budget, cut }) as BestSet;
const known = knownSets([set(0), set(1), set(2)], set(12, 0.5));

describe('the best sets on the slider', () => {
  it('hold the one the command prints, also where the search ended before it', () => {
    expect(known.map(({ budget }) => budget)).toEqual([0, 1, 2, 12]);
    expect(knownSets([set(11), set(12, 0.4)], set(12, 0.5))).toEqual([set(11), set(12, 0.5)]);
    expect(knownSets([], set(12, 0.5))).toEqual([set(12, 0.5)]);
  });

  it('let no key get stuck at a gap', () => {
    expect(stepTo(known, 2, 3)).toBe(12);
    expect(stepTo(known, 12, 11)).toBe(2);
    expect(stepTo(known, 1, 2)).toBe(2);
    expect(stepTo(known, 12, 13)).toBe(12);
    expect(stepTo(known, 0, -1)).toBe(0);
  });
});

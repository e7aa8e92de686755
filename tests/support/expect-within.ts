import { expect } from 'vitest';

/** How far an answer may lie from what is expected: a share of it, or so much in its own unit. */
export type Tolerance = { readonly rel: number } | { readonly abs: number };

/**
 * Fails when `actual` is further from `expected` than allowed, or is not finite. A relative tolerance
 * wants an expected value other than zero: there it would allow nothing or everything.
 */
export function expectWithin(actual: number, expected: number, tolerance: Tolerance): void {
  const allowed = 'abs' in tolerance ? tolerance.abs : tolerance.rel * Math.abs(expected);
  if ('rel' in tolerance && expected === 0) throw new Error('use an absolute tolerance around zero');
  const off = Math.abs(actual - expected);
  expect(off <= allowed, `got ${actual}, expected ${expected} within ${allowed}, off by ${off}`).toBe(true);
}

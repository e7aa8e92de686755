import { expect } from 'vitest';
import { expectWithin } from './expect-within';

/**
 * Fails when a tree of values differs from the expected one: numbers within a relative tolerance (and
 * exactly where zero is expected), everything else exactly. Keys that are not expected are let pass.
 */
export function expectSameTree(actual: unknown, expected: unknown, rel: number, path = ''): void {
  if (typeof expected === 'number' && expected !== 0) {
    expect(typeof actual, path).toBe('number');
    expectWithin(Number(actual), expected, { rel });
    return;
  }
  if (typeof expected !== 'object' || expected === null) {
    expect(actual, path).toBe(expected);
    return;
  }
  expect(typeof actual, path).toBe('object');
  for (const [key, value] of Object.entries(expected)) {
    expect(actual, path).toHaveProperty([key]);
    expectSameTree((actual as Record<string, unknown>)[key], value, rel, `${path}.${key}`);
  }
}

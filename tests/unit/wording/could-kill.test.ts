import { describe, expect, it } from 'vitest';
import type { GradeOrNone } from '@/lib/core/result';
import { endCouldKill, riskCouldKill } from '@/lib/wording/could-kill';

const weights = { 1: 1, 2: 10, 3: 100, 4: 1000, 5: 10_000 };
const end = (severity: 3 | 4 | 5, expectedWeight: number, grade: GradeOrNone = 'low') => ({ severity, expectedWeight, grade });

describe('what could kill', () => {
  it('is said at every grade, and not of what nothing is exposed to', () => {
    for (const grade of ['low', 'moderate', 'high', 'extreme'] as const) expect(endCouldKill(end(5, 10_000, grade), weights)).toBe(true);
    expect(endCouldKill(end(5, 10_000, 'not applicable'), weights)).toBe(false);
  });

  it('is known also where the middle of the fires is milder: a mean above class 4 needs some in class 5', () => {
    expect(endCouldKill(end(3, 1127.8), weights)).toBe(true);
    expect(endCouldKill(end(4, 1000), weights)).toBe(false);
  });

  it('is said of a risk as soon as one of its ends does', () => {
    const risk = (...ends: readonly ReturnType<typeof end>[]) => ({ branches: ends }) as unknown as Parameters<typeof riskCouldKill>[0];
    expect(riskCouldKill(risk(end(3, 100), end(5, 10_000)), weights)).toBe(true);
    expect(riskCouldKill(risk(end(3, 100), end(4, 900)), weights)).toBe(false);
  });
});

import type { RecordedExposure } from '@/lib/core/document';

type ByScenario<T> = Readonly<Record<string, T>>;

/**
 * A record with the share that the controls let through while it was made. Which of several signed versions was in force
 * at each charge is not told apart: the least share of all of them and of today is taken. The less gets through, the
 * less a quiet season says and the more an event weighs, so this errs towards caution. Without an earlier version the
 * engine takes today's controls, and says so.
 * @param today share by scenario with the controls of the draft
 * @param before shares by scenario of each version that was in force while the record was made
 */
export function cautiousRecord(seen: ByScenario<RecordedExposure>, today: ByScenario<number>, before: readonly ByScenario<number>[]): ByScenario<RecordedExposure> {
  if (before.length === 0) return seen;
  return Object.fromEntries(Object.entries(seen).map(([id, record]) => {
    const shares = [today, ...before].flatMap((products) => products[id] ?? []);
    return [id, shares.length === 0 ? record : { ...record, preventiveProduct: Math.min(...shares) }];
  }));
}

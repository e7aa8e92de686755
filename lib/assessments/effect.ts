import type { QuickScore } from '@/lib/core/quick-score';
import { rounded } from '@/lib/wording/numbers';

export interface NamedStop { readonly id: string; readonly title: string }

/** What a saved page changed: never told before saving, and never by option, so that nobody answers for the figure. */
export interface Effect {
  /** stop conditions that held before and hold no more */
  readonly cleared: readonly NamedStop[];
  /** stop conditions that hold since */
  readonly raised: readonly NamedStop[];
  /** the total of all risks after, as a share of what it was; null where there was none before */
  readonly share: number | null;
}

/** What lies between two results of one assessment. */
export function effectOf(before: QuickScore, after: QuickScore): Effect {
  return {
    cleared: before.stops.filter(({ id }) => after.stops.every((stop) => stop.id !== id)),
    raised: after.stops.filter(({ id }) => before.stops.every((stop) => stop.id !== id)),
    share: before.totalHarm > 0 ? after.totalHarm / before.totalHarm : null,
  };
}

/** Less than this is no news: the figures are judged far more coarsely. */
const NO_NEWS = 0.005;

/** How the total of all risks moved, in words. */
export function totalMoved({ share }: Pick<Effect, 'share'>): string {
  if (share === null || Math.abs(share - 1) < NO_NEWS) return 'The total of all risks stays as it was.';
  if (share >= 2) return `The total of all risks is ${rounded(share)} times what it was.`;
  return `The total of all risks is ${rounded(Math.abs(share - 1) * 100)} % ${share < 1 ? 'lower' : 'higher'}.`;
}

import type { Sampled } from '@/lib/core/result';
import { rounded, roundedValue } from './numbers';

const NEVER = 'does not arise here';
const TEAMS = 100;
/** Events a season below which a number of seasons says nothing any more. */
const RAREST = 1e-6;
const MILLION = 'a million';

/**
 * How often, as people say it: "about once in 170 seasons", "about twice a season".
 * @param frequency events per season, 0 or more
 */
export function onceInWords(frequency: number): string {
  if (frequency === 0) return NEVER;
  if (isOften(frequency)) return `about ${timesWords(frequency)} a season`;
  return frequency < RAREST ? `seldomer than once in ${MILLION} seasons` : `about once in ${seasons(frequency)} seasons`;
}

/**
 * The same for many teams, because "once in 170 seasons" reads like never: "in 100 teams like yours,
 * about 1 every 2 seasons".
 * @param frequency events per season in one team, 0 or more
 */
export function inHundredTeams(frequency: number): string {
  if (frequency === 0) return NEVER;
  const all = TEAMS * frequency;
  const start = `in ${TEAMS} teams like yours,`;
  if (all > 1 / 1.5) return `${start} about ${rounded(Math.max(1, all))} a season`;
  if (all < RAREST) return `${start} fewer than 1 in ${MILLION} seasons`;
  return `${start} about 1 every ${all > 1 / 9.5 ? (1 / all).toFixed(0) : seasons(all)} seasons`;
}

/** "between 20 and 1,500"; one number when both round to the same. */
export function rangeWords(low: number, high: number): string {
  return between(rounded(low), rounded(high));
}

/**
 * The range of a frequency in the unit its middle is said in: seasons between events, or events a season,
 * or both when the range reaches over one a season.
 * @param range 5th and 95th percentile, events per season, 0 or more
 */
export function onceRangeWords({ p05, p95 }: Pick<Sampled, 'p05' | 'p95'>): string {
  if (p95 === 0) return NEVER;
  if (isOften(p05)) return `${rangeWords(p05, p95)} times a season`;
  if (p05 === 0) return `at most ${isOften(p95) ? `${timesWords(p95)} a season` : `once in ${seasons(p95)} seasons`}`;
  if (isOften(p95)) return `between ${timesWords(p95)} a season and once in ${seasons(p05)}`;
  return between(seasons(p95), seasons(p05));
}

/**
 * Middle and range in one line: "about once in 170 seasons (between 20 and 1,500)".
 * @param mean events per season in closed form, which the grade rests on
 */
export function frequencyWords(mean: number, range: Pick<Sampled, 'p05' | 'p95'>): string {
  return mean === 0 ? NEVER : `${onceInWords(mean)} (${onceRangeWords(range)})`;
}

function between(from: string, to: string): string {
  return from === to ? `close to ${from}` : `between ${from} and ${to}`;
}

/** Seasons between two events; beyond a million only that it is beyond. */
function seasons(frequency: number): string {
  return frequency < RAREST ? `over ${MILLION}` : rounded(1 / frequency);
}

/** Whether a frequency is said in events a season; 0.99 still rounds to once a season. */
function isOften(frequency: number): boolean {
  return frequency >= 1 || (frequency > RAREST && roundedValue(1 / frequency) <= 1);
}

function timesWords(frequency: number): string {
  const times = roundedValue(frequency);
  if (times <= 1) return 'once';
  return times === 2 ? 'twice' : `${rounded(frequency)} times`;
}

import type { Sampled } from '@/lib/core/result';
import { rounded, roundedValue } from './numbers';

const NEVER = 'does not arise here';
const TEAMS = 100;

/**
 * How often, as people say it: "about once in 170 seasons", "about twice a season".
 * @param frequency events per season, 0 or more
 */
export function onceInWords(frequency: number): string {
  if (frequency === 0) return NEVER;
  return isOften(frequency) ? `about ${timesWords(frequency)} a season` : `about once in ${rounded(1 / frequency)} seasons`;
}

/**
 * The same for many teams, because "once in 170 seasons" reads like never: "in 100 teams like yours,
 * about 1 every 2 seasons".
 * @param frequency events per season in one team, 0 or more
 */
export function inHundredTeams(frequency: number): string {
  if (frequency === 0) return NEVER;
  const all = TEAMS * frequency;
  const start = `in ${TEAMS} teams like yours, about`;
  if (isOften(all)) return `${start} ${rounded(all)} a season`;
  const seasons = 1 / all;
  return `${start} 1 every ${seasons < 9.5 ? seasons.toFixed(0) : rounded(seasons)} seasons`;
}

/** "between 20 and 1,500"; one number when both round to the same. */
export function rangeWords(low: number, high: number): string {
  const [from, to] = [rounded(low), rounded(high)];
  return from === to ? `close to ${from}` : `between ${from} and ${to}`;
}

/**
 * The range of a frequency in the unit its middle is said in: seasons between events, or events a season,
 * or both when the range reaches over one a season.
 * @param range 5th and 95th percentile, events per season, 0 or more
 */
export function onceRangeWords({ p05, p95 }: Pick<Sampled, 'p05' | 'p95'>): string {
  if (p95 === 0) return NEVER;
  if (isOften(p05)) return `${rangeWords(p05, p95)} times a season`;
  if (p05 === 0) return `at most ${isOften(p95) ? `${timesWords(p95)} a season` : `once in ${rounded(1 / p95)} seasons`}`;
  if (isOften(p95)) return `between ${timesWords(p95)} a season and once in ${rounded(1 / p05)}`;
  return rangeWords(1 / p95, 1 / p05);
}

/**
 * Middle and range in one line: "about once in 170 seasons (between 20 and 1,500)".
 * @param mean events per season in closed form, which the grade rests on
 */
export function frequencyWords(mean: number, range: Pick<Sampled, 'p05' | 'p95'>): string {
  return mean === 0 ? NEVER : `${onceInWords(mean)} (${onceRangeWords(range)})`;
}

/** Whether a frequency is said in events a season; 0.99 still rounds to once a season. */
function isOften(frequency: number): boolean {
  return frequency >= 1 || (frequency > 0 && roundedValue(1 / frequency) <= 1);
}

function timesWords(frequency: number): string {
  const times = roundedValue(frequency);
  if (times <= 1) return 'once';
  return times === 2 ? 'twice' : `${rounded(frequency)} times`;
}

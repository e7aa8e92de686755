import { rounded, whole } from './numbers';

/** A millimetre, m: finer than any of these models knows. */
const NOTHING = 0.001;

/** A length, in centimetres below one metre: "25 cm", "1.2 m". Two figures. */
export function metres(length: number): string {
  if (length > 0 && length < NOTHING) return 'less than 1 mm';
  return length < 1 ? `${rounded(length * 100)} cm` : `${rounded(length)} m`;
}

/** From one length to another, in one unit: "26 to 60 cm", "0.4 to 1.2 m". */
export function metresRange(low: number, high: number): string {
  if (low < NOTHING) return `up to ${metres(high)}`;
  return high < 1 ? `${rounded(low * 100)} to ${metres(high)}` : `${rounded(low)} to ${metres(high)}`;
}

/** A concentration: "34 ppm". */
export function ppm(concentration: number): string { return `${rounded(concentration)} ppm`; }

/** Hours of work: "0.5 h". */
export function hours(time: number): string { return `${rounded(time)} h`; }

/**
 * A time in words, to the second: "45 s", "2 min", "2 min 5 s".
 * @param seconds 0 or more
 */
export function durationWords(seconds: number): string {
  const { minutes, rest } = split(seconds);
  if (minutes === 0) return `${rest} s`;
  return rest === 0 ? `${whole(minutes)} min` : `${whole(minutes)} min ${rest} s`;
}

/** Minutes and seconds as on a clock: "2:05". */
export function minutesSeconds(seconds: number): string {
  const { minutes, rest } = split(seconds);
  return `${minutes}:${String(rest).padStart(2, '0')}`;
}

/** Minutes as hours where that reads better: "40 min", "5.2 h". */
export function minutesOrHours(minutes: number): string {
  return minutes < 90 ? `${rounded(minutes)} min` : `${rounded(minutes / 60)} h`;
}

function split(seconds: number): { readonly minutes: number; readonly rest: number } {
  const rounds = Math.round(seconds);
  return { minutes: Math.floor(rounds / 60), rest: rounds % 60 };
}

import { rounded, whole } from './numbers';

/** A length: "0.25 m", "12 m". Two figures. */
export function metres(length: number): string { return `${rounded(length)} m`; }

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

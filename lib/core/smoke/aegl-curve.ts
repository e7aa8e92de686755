import type { Minutes, PartsPerMillion } from '@/lib/units/quantity';
import { scaledToDuration } from './ten-berge';

/** One guideline level over exposure time: the table's points and 1/n of Cⁿ·t between each and the next. */
export interface AeglCurve {
  readonly durations: readonly Minutes[];
  readonly ppm: readonly PartsPerMillion[];
  /** inverseExponents[i] belongs to the stretch from durations[i] to durations[i + 1] */
  readonly inverseExponents: readonly number[];
}

/**
 * Curve through the points of a guideline table.
 * @param durationsMin minutes, rising
 * @param ppm a value for each duration, never rising
 * @throws when the table is not of that shape: a fault of the content
 */
export function aeglCurve(durationsMin: readonly number[], ppm: readonly number[]): AeglCurve {
  if (durationsMin.length === 0 || durationsMin.length !== ppm.length) throw new Error('a guideline table needs one value for each duration');
  const inverseExponents: number[] = [];
  for (let index = 0; index + 1 < ppm.length; index += 1) {
    const [from, to, here, next] = [at(durationsMin, index), at(durationsMin, index + 1), at(ppm, index), at(ppm, index + 1)];
    if (!(from > 0 && to > from && next > 0 && here >= next)) throw new Error('durations must rise and values must not, all above 0');
    inverseExponents.push(Math.log(here / next) / Math.log(to / from));
  }
  return { durations: durationsMin as readonly Minutes[], ppm: ppm as readonly PartsPerMillion[], inverseExponents };
}

/**
 * Value of the curve for an exposure of any length: straight lines between the table's points on log-log
 * paper, which is Cⁿ·t with the n that fits both ends. The first value is held before the table
 * begins, the last after it ends.
 * Source: values EPA and NRC (REFERENCES B.1, B.2); the interpolation is the content's rule.
 * @param minutes 0 or more
 */
export function aeglAt(curve: AeglCurve, minutes: Minutes): PartsPerMillion {
  const { durations, ppm, inverseExponents } = curve;
  let stretch = durations.length - 1;
  while (stretch > 0 && at(durations, stretch) > minutes) stretch -= 1;
  const inverseExponent = inverseExponents[stretch];
  if (inverseExponent === undefined || minutes <= at(durations, stretch)) return at(ppm, stretch);
  return scaledToDuration(at(ppm, stretch), at(durations, stretch), minutes, inverseExponent);
}

function at<T>(values: readonly T[], index: number): T {
  const value = values[index];
  if (value === undefined) throw new Error(`no point ${index} in the table`);
  return value;
}

/** Steps of a millionth: far below what any meter of a school shows. */
const STEPS = 1e6;

/**
 * A difference or ratio of two readings without the dust of binary fractions: 3.8 V − 3.7 V is a little less
 * than 0.1 V to a computer, and a limit of 0.1 V would not fire at its limit.
 */
export function toMeterResolution(value: number): number {
  return Math.round(value * STEPS) / STEPS;
}

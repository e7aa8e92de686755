import type { CubicMetresPerHour, Metres } from './quantity';

/** The international foot, m, by definition (agreement of 1959). */
const FOOT = 0.3048;
/** A cubic foot a minute, m³/h. */
const CUBIC_FOOT_A_MINUTE = FOOT ** 3 * 60;

/** Returns a length in metres. @param feet any number */
export function feet(length: number): Metres {
  return (length * FOOT) as Metres;
}

/** Returns a length in feet. */
export function inFeet(length: Metres): number {
  return length / FOOT;
}

/** Returns a flow of air in m³/h. @param flow cubic feet a minute */
export function cubicFeetPerMinute(flow: number): CubicMetresPerHour {
  return (flow * CUBIC_FOOT_A_MINUTE) as CubicMetresPerHour;
}

/** Returns a flow of air in cubic feet a minute. */
export function inCubicFeetPerMinute(flow: CubicMetresPerHour): number {
  return flow / CUBIC_FOOT_A_MINUTE;
}

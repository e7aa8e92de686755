import type { Celsius, CubicMetresPerHour, Kelvin, Metres } from './quantity';

/** The international foot, m, by definition (agreement of 1959). */
const FOOT = 0.3048;
/** A cubic foot a minute, m³/h. */
const CUBIC_FOOT_A_MINUTE = FOOT ** 3 * 60;
/** Where 0 °C lies on Fahrenheit's scale. */
const FREEZING = 32;

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

/** Returns a temperature in °C. @param temperature °F, any number */
export function fahrenheit(temperature: number): Celsius {
  return (((temperature - FREEZING) * 5) / 9) as Celsius;
}

/** Returns a temperature in °F. */
export function inFahrenheit(temperature: Celsius): number {
  return (temperature * 9) / 5 + FREEZING;
}

/** Returns a difference of temperatures in K. @param difference °F, any number: its scale has 9 degrees for 5 K */
export function fahrenheitDifference(difference: number): Kelvin {
  return ((difference * 5) / 9) as Kelvin;
}

/** Returns a difference of temperatures in °F. */
export function inFahrenheitDifference(difference: Kelvin): number {
  return (difference * 9) / 5;
}

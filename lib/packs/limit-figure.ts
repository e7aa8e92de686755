import type { Celsius, Kelvin } from '@/lib/units/quantity';
import { fahrenheit, fahrenheitDifference, inFahrenheit, inFahrenheitDifference } from '@/lib/units/us-customary';
import type { TemperatureUnit } from './checks/check-answers';
import type { AdjustableLimit } from './school-rules';

type Unit = AdjustableLimit['unit'];

/** Digits of a temperature in °F as it is shown. */
const SHOWN_DIGITS = 2;
/** Digits of a temperature in °C that was typed in °F: so many that it is shown again as it was typed. */
const KEPT_DIGITS = 4;

/** Units as people read them on their meters. */
const UNIT_WORDS: Readonly<Record<string, string>> = { share: 'of its label', h: 'hours', times: 'times' };

const isTemperature = (unit: Unit): boolean => unit === '°C' || unit === 'K';

/** Returns the unit in which a limit is shown and typed; a difference of one kelvin is one degree Celsius. */
export function unitWords(unit: Unit, temperature: TemperatureUnit): string {
  return isTemperature(unit) ? temperature : (UNIT_WORDS[unit] ?? unit);
}

/** Returns a limit's figure as it is shown, and as it stands in its field. */
export function shownFigure(unit: Unit, value: number, temperature: TemperatureUnit): number {
  if (temperature === '°C' || !isTemperature(unit)) return value;
  return rounded(unit === 'K' ? inFahrenheitDifference(value as Kelvin) : inFahrenheit(value as Celsius), SHOWN_DIGITS);
}

/**
 * Returns the figure that is kept for one that was typed. What was typed as it was shown is kept as it was stored, so
 * that a form saved unchanged changes nothing, and the end of a range lies within it.
 * @param shown figures that stood in the form: the school's own, the content's and the ends of the range
 */
export function figureToKeep(unit: Unit, typed: number, temperature: TemperatureUnit, shown: readonly number[]): number {
  if (temperature === '°C' || !isTemperature(unit)) return typed;
  const same = shown.find((value) => shownFigure(unit, value, temperature) === typed);
  return same ?? rounded(unit === 'K' ? fahrenheitDifference(typed) : fahrenheit(typed), KEPT_DIGITS);
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

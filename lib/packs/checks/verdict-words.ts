import type { FiredRule } from '@/lib/core/battery/fired-rules';
import { NOT_SURE } from '@/lib/core/battery/pack-measures';
import type { PackLimits, PackVerdict, VerdictWords } from '@/lib/content/model';
import type { Celsius, Kelvin } from '@/lib/units/quantity';
import { inFahrenheit, inFahrenheitDifference } from '@/lib/units/us-customary';
import type { TemperatureUnit } from './check-answers';

/** Title and words of a verdict; null for an edition without them. */
export function wordsOfVerdict({ check }: PackLimits, verdict: PackVerdict): VerdictWords | null {
  return check?.verdicts.find((words) => words.verdict === verdict) ?? null;
}

/** A sign as it is said to a person: its words, and the figure measured against its limit where there are figures. */
export function signWords(rule: FiredRule, limits: PackLimits, unit: TemperatureUnit): string {
  if (rule.measured === NOT_SURE) return `${rule.text} (not sure, which counts as the sign)`;
  if (typeof rule.measured !== 'number' || typeof rule.limit !== 'number') return rule.text;
  return `${rule.text}: ${figureOf(rule.measure, rule.measured, limits, unit)}, limit ${figureOf(rule.measure, rule.limit, limits, unit)}`;
}

const NUMBER = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 2 });
const VOLTS = new Intl.NumberFormat('en-GB', { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** A measured figure with its unit, as people read it on their meters. */
export function figureOf(measure: string, value: number, { check }: PackLimits, temperature: TemperatureUnit): string {
  const unit = check?.measures.find(({ id }) => id === measure)?.unit ?? '';
  if (measure === 'cellSpread') return `${NUMBER.format(Math.round(value * 1000))} mV`;
  if (measure === 'capacityShare') return `${NUMBER.format(Math.round(value * 100))} %`;
  if (unit === 'V') return `${VOLTS.format(value)} V`;
  if (unit === 'K') return temperature === '°F' ? `${NUMBER.format(inFahrenheitDifference(value as Kelvin))} °F` : `${NUMBER.format(value)} °C`;
  if (unit === '°C' && temperature === '°F') return `${NUMBER.format(inFahrenheit(value as Celsius))} °F`;
  return `${NUMBER.format(value)} ${unit}`.trim();
}

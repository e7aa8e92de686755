import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { rangeInWords } from '@/lib/questionnaire/say-value';
import { ok, refuse, type CubicMetresPerHour, type Metres, type Result } from '@/lib/units/quantity';
import { cubicFeetPerMinute, feet, inCubicFeetPerMinute, inFeet } from '@/lib/units/us-customary';
import { AREA_NUMBERS, type AreaNumber } from './area-fields';

/** What a school measures in. */
export type Units = 'metric' | 'us';

type Kind = (typeof AREA_NUMBERS)[AreaNumber]['quantity'];

/** The unit a kind of figure is typed and shown in. */
export function unitOf(kind: Kind, units: Units): string {
  switch (kind) {
    case 'length': return units === 'us' ? 'ft' : 'm';
    case 'flow': return units === 'us' ? 'ft³/min' : 'm³/h';
    case 'air changes': return 'times an hour';
    case 'count': return '';
  }
}

/** A figure of an area as somebody typed it, in SI. Empty is null; outside its bounds it is refused in the unit typed. */
export function readMeasure(field: AreaNumber, typed: string, units: Units): Result<number | null> {
  const { least, most, quantity } = AREA_NUMBERS[field];
  if (typed.trim() === '') return ok(null);
  const read = readTypedNumber(typed);
  if (!read.ok) return refuse(read.reason);
  const value = toSi(quantity, read.value, units);
  if (value < least || value > most) return refuse(`Enter ${rangeInWords(rounded(fromSi(quantity, least, units), 2), rounded(fromSi(quantity, most, units), 2), unitOf(quantity, units))}`);
  if (quantity === 'count' && !Number.isInteger(value)) return refuse('Enter a whole number');
  return ok(value);
}

/** A figure of an area as it stands in the form again: to a centimetre or a hundredth of a foot. */
export function writeMeasure(field: AreaNumber, value: number | null, units: Units): string {
  return value === null ? '' : String(rounded(fromSi(AREA_NUMBERS[field].quantity, value, units), 2));
}

function toSi(kind: Kind, value: number, units: Units): number {
  if (units === 'metric') return value;
  return kind === 'length' ? feet(value) : kind === 'flow' ? cubicFeetPerMinute(value) : value;
}

function fromSi(kind: Kind, value: number, units: Units): number {
  if (units === 'metric') return value;
  return kind === 'length' ? inFeet(value as Metres) : kind === 'flow' ? inCubicFeetPerMinute(value as CubicMetresPerHour) : value;
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

import type { PackLimits } from '@/lib/content/model';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import type { Celsius } from '@/lib/units/quantity';
import { fahrenheit, inFahrenheit } from '@/lib/units/us-customary';
import type { Pack } from '../pack';
import { CHECK_PAGES, type CheckPageId } from './check-pages';

/** What was ticked and typed in a check so far, by field name. */
export type CheckTyped = Readonly<Record<string, string>>;

/** Fields of the form that are no measure by themselves. */
export const HIT_FIELD = 'hit';
export const ROOM_TEMPERATURE_FIELD = 'roomTemperature';
export const NOT_MEASURED_FIELD = 'notMeasured';
export const RESISTANCE_FIELD = 'milliohms';
export const DELIVERED_FIELD = 'deliveredMah';
export const cellField = (cell: number): string => `cell${cell}`;

export const ANSWERS = ['yes', 'no', 'not sure'] as const;
/** Answer to "warmer than at the last look" when there was none. */
export const FIRST_LOOK = 'first look';

interface NumberLimits { readonly least: number; readonly most: number; readonly unit: string }
/** What a meter, a thermometer or a calendar can show; outside of it is a slip of the keyboard. Temperatures in °C. */
const CHECK_NUMBERS: Readonly<Record<string, NumberLimits>> = {
  hoursSinceUse: { least: 0, most: 9000, unit: 'h' },
  packTemperature: { least: -30, most: 150, unit: '°C' },
  [ROOM_TEMPERATURE_FIELD]: { least: -30, most: 60, unit: '°C' },
  hoursSinceImpact: { least: 0, most: 9000, unit: 'h' },
  hoursSinceCharge: { least: 0, most: 90_000, unit: 'h' },
  hoursFull: { least: 0, most: 90_000, unit: 'h' },
  [RESISTANCE_FIELD]: { least: 0.1, most: 2000, unit: 'mΩ' },
  [DELIVERED_FIELD]: { least: 1, most: 20_000, unit: 'mAh' },
};
const CELL: NumberLimits = { least: 0, most: 5, unit: 'V' };

/** Fields in degrees, which a school may measure in Fahrenheit. */
const TEMPERATURES: readonly string[] = ['packTemperature', ROOM_TEMPERATURE_FIELD];
export const TEMPERATURE_UNITS = ['°C', '°F'] as const;
export type TemperatureUnit = (typeof TEMPERATURE_UNITS)[number];

/** The yes-or-no measures that the steps of a page ask for, as the content orders them. */
export function yesNoMeasures(limits: PackLimits, page: CheckPageId, pack: Pick<Pack, 'secondHand'>): readonly string[] {
  const check = limits.check;
  const steps: readonly string[] = CHECK_PAGES.find(({ id }) => id === page)?.steps ?? [];
  const asked = (check?.steps ?? []).filter(({ id }) => steps.includes(id)).flatMap(({ measures }) => measures);
  const yesNo = new Set((check?.measures ?? []).filter(({ values }) => values === 'yes or no').map(({ id }) => id));
  return asked.filter((id) => yesNo.has(id) && isOpen(id, pack));
}

/** What the register knows is not asked again; the first charge only of packs that may be second-hand. */
function isOpen(measure: string, { secondHand }: Pick<Pack, 'secondHand'>): boolean {
  if (measure === 'secondHand') return secondHand === null;
  return measure !== 'firstChargeWentWell' || secondHand !== false;
}

/**
 * A number as it was typed, temperatures in °C. Undefined when the field is empty, cannot be read or shows what no meter
 * shows: `checkFaults` says so, and a slip of the keyboard is no sign.
 */
export function numberOf(typed: CheckTyped, field: string, unit: TemperatureUnit): number | undefined {
  const read = readTypedNumber(typed[field] ?? '');
  if (!read.ok) return undefined;
  const value = unit === '°F' && TEMPERATURES.includes(field) ? fahrenheit(read.value) : read.value;
  const { least, most } = CHECK_NUMBERS[field] ?? CELL;
  return value >= least && value <= most ? value : undefined;
}

/** What a field may hold, in the unit it is typed in. */
export function rangeOf(field: string, unit: TemperatureUnit): NumberLimits {
  const range = CHECK_NUMBERS[field] ?? CELL;
  return unit === '°F' && TEMPERATURES.includes(field) ? { least: wholeFahrenheit(range.least), most: wholeFahrenheit(range.most), unit: '°F' } : range;
}

const wholeFahrenheit = (celsius: number): number => Math.round(inFahrenheit(celsius as Celsius));

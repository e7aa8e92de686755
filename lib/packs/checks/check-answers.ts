import type { PackLimits } from '@/lib/content/model';
import type { Fault } from '@/lib/forms/form-state';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { rangeInWords } from '@/lib/questionnaire/say-value';
import type { Pack } from '../pack';
import { CHECK_PAGES, type CheckPageId, pagesUpTo } from './check-pages';

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
export type TemperatureUnit = '°C' | '°F';

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

/** Measures that need no answer by themselves: each has a reading that says the same, or a first time. */
const MAY_STAY_OPEN: readonly string[] = ['feltWarm', 'firstChargeWentWell'];

/**
 * A number as it was typed, temperatures in °C. Undefined when the field is empty, cannot be read or shows what no meter
 * shows: `checkFaults` says so, and a slip of the keyboard is no sign.
 */
export function numberOf(typed: CheckTyped, field: string, unit: TemperatureUnit): number | undefined {
  const read = readTypedNumber(typed[field] ?? '');
  if (!read.ok) return undefined;
  const value = unit === '°F' && TEMPERATURES.includes(field) ? ((read.value - 32) * 5) / 9 : read.value;
  const { least, most } = CHECK_NUMBERS[field] ?? CELL;
  return value >= least && value <= most ? value : undefined;
}

/** What is missing or cannot be read on the pages up to this one, one fault a field, in the order of the form. */
export function checkFaults(limits: PackLimits, pack: Pack, typed: CheckTyped, page: CheckPageId, unit: TemperatureUnit): readonly Fault[] {
  return pagesUpTo(page).flatMap((id) => [
    ...yesNoMeasures(limits, id, pack).flatMap((measure) => yesNoFault(limits, typed, measure)),
    ...pageFaults(id, pack, typed, unit),
  ]);
}

function yesNoFault({ check }: PackLimits, typed: CheckTyped, measure: string): readonly Fault[] {
  const answer = typed[measure] ?? '';
  const known: readonly string[] = measure === 'warming' ? [...ANSWERS, FIRST_LOOK] : ANSWERS;
  if (known.includes(answer) || (answer === '' && MAY_STAY_OPEN.includes(measure))) return [];
  const ask = check?.measures.find(({ id }) => id === measure)?.ask ?? measure;
  return [{ field: measure, message: `Answer: ${ask}` }];
}

function pageFaults(page: CheckPageId, pack: Pack, typed: CheckTyped, unit: TemperatureUnit): readonly Fault[] {
  switch (page) {
    case 'look':
    case 'listen': return [];
    case 'warmth': return [...numberFaults(typed, ['hoursSinceUse', 'packTemperature', ROOM_TEMPERATURE_FIELD], unit), ...warmthFault(typed)];
    case 'record': return [...hitFaults(typed, unit), ...numberFaults(typed, ['hoursSinceCharge', 'hoursFull'], unit)];
    case 'voltage': return [...cellFaults(pack, typed, unit), ...numberFaults(typed, [RESISTANCE_FIELD, DELIVERED_FIELD], unit)];
  }
}

function warmthFault(typed: CheckTyped): readonly Fault[] {
  const [pack, room] = [typed['packTemperature'] ?? '', typed[ROOM_TEMPERATURE_FIELD] ?? ''];
  if (pack !== '' && room === '') return [{ field: ROOM_TEMPERATURE_FIELD, message: 'Enter how warm the room is too' }];
  if (pack === '' && (typed['feltWarm'] ?? '') === '') return [{ field: 'feltWarm', message: 'Choose yes, no or not sure, or enter both temperatures' }];
  return [];
}

function hitFaults(typed: CheckTyped, unit: TemperatureUnit): readonly Fault[] {
  const hit = typed[HIT_FIELD] ?? '';
  if (!(['no', 'hours', 'not sure'] as readonly string[]).includes(hit)) return [{ field: HIT_FIELD, message: 'Say whether it was hit' }];
  if (hit !== 'hours') return [];
  return (typed['hoursSinceImpact'] ?? '') === '' ? [{ field: 'hoursSinceImpact', message: 'Enter how many hours ago it was hit' }] : numberFaults(typed, ['hoursSinceImpact'], unit);
}

function cellFaults(pack: Pack, typed: CheckTyped, unit: TemperatureUnit): readonly Fault[] {
  const fields = Array.from({ length: pack.series }, (_, at) => cellField(at + 1));
  const empty = fields.filter((field) => (typed[field] ?? '') === '');
  const skipped = (typed[NOT_MEASURED_FIELD] ?? '') !== '';
  if (empty.length === fields.length) return skipped ? [] : [{ field: cellField(1), message: 'Enter the voltage of each cell, or say that you did not measure them' }];
  if (skipped) return [{ field: NOT_MEASURED_FIELD, message: 'Either enter voltages, or say that you did not measure them' }];
  return [
    ...empty.map((field): Fault => ({ field, message: 'Enter its voltage; 0 when the meter shows nothing' })),
    ...numberFaults(typed, fields.filter((field) => !empty.includes(field)), unit),
  ];
}

function numberFaults(typed: CheckTyped, fields: readonly string[], unit: TemperatureUnit): readonly Fault[] {
  return fields.flatMap((field): Fault[] => {
    const text = (typed[field] ?? '').trim();
    if (text === '') return [];
    const read = readTypedNumber(text);
    if (!read.ok) return [{ field, message: read.reason }];
    if (numberOf(typed, field, unit) !== undefined) return [];
    const { least, most, unit: shown } = CHECK_NUMBERS[field] ?? CELL;
    return [{ field, message: unit === '°F' && TEMPERATURES.includes(field) ? `Enter ${rangeInWords(fahrenheit(least), fahrenheit(most), '°F')}` : `Enter ${rangeInWords(least, most, shown)}` }];
  });
}

const fahrenheit = (celsius: number): number => Math.round((celsius * 9) / 5 + 32);

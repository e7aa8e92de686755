import type { PackLimits } from '@/lib/content/model';
import type { Fault } from '@/lib/forms/form-state';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { rangeInWords } from '@/lib/questionnaire/say-value';
import type { Pack } from '../pack';
import { ANSWERS, cellField, type CheckTyped, DELIVERED_FIELD, FIRST_LOOK, HIT_FIELD, NOT_MEASURED_FIELD, numberOf, rangeOf, RESISTANCE_FIELD, ROOM_TEMPERATURE_FIELD, type TemperatureUnit, yesNoMeasures } from './check-answers';
import { type CheckPageId, pagesUpTo } from './check-pages';

/** Measures that need no answer by themselves: each has a reading that says the same, or a first time. */
const MAY_STAY_OPEN: readonly string[] = ['feltWarm', 'firstChargeWentWell'];

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
    const { least, most, unit: shown } = rangeOf(field, unit);
    return [{ field, message: `Enter ${rangeInWords(least, most, shown)}` }];
  });
}

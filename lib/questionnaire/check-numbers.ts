import type { NumberField } from '@/lib/content/model';
import { type AnswerCheck, type AnswerFault, NOT_SURE, wrong } from './answer-fault';
import { listed, rangeInWords, sayValue } from './say-value';

/** Numbers by input, each in its range, a part never more than its whole. */
export function checkNumbers(fields: readonly NumberField[], raw: unknown): AnswerCheck {
  const names = listed(fields.filter(({ earlier }) => earlier === undefined).map((field) => field.input));
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return wrong({ path: [], problem: sayValue(raw), expected: `an object with numbers for ${names}, or "${NOT_SURE}"` });
  }
  const faults: AnswerFault[] = [];
  const numbers = new Map<string, number>();
  for (const [input, value] of Object.entries(raw)) {
    const field = fields.find((candidate) => candidate.input === input);
    if (field === undefined) faults.push({ path: [input], problem: 'is not asked by this question', expected: `only ${names}` });
    else if (typeof value === 'number' && value >= field.min && value <= field.max) numbers.set(input, value);
    else faults.push({ path: [input], problem: sayValue(value), expected: rangeInWords(field.min, field.max, field.unit) });
  }
  const all = [...faults, ...partFaults(fields, numbers)];
  return all.length > 0 ? wrong(...all) : { ok: true, answer: Object.fromEntries(numbers) };
}

/** A part that is more than the number it is a part of; where one of the two is not given, nothing is held against the other. */
export function partFaults(fields: readonly NumberField[], numbers: ReadonlyMap<string, unknown>): readonly AnswerFault[] {
  return fields.flatMap(({ input, noMoreThan }): readonly AnswerFault[] => {
    const whole = fields.find((field) => field.input === noMoreThan);
    if (whole === undefined) return [];
    const [part, most] = [numbers.get(input), numbers.get(whole.input)];
    if (typeof part !== 'number' || typeof most !== 'number' || part <= most) return [];
    return [{ path: [input], problem: `is ${part}, more than the ${most} ${whole.label} it is a part of`, expected: `a number from 0 to ${most}, the ${whole.label}` }];
  });
}

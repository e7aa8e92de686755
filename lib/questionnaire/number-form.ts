import { z } from 'zod';
import type { NumberField } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { partFaults } from './check-numbers';
import { partsAboveWhole } from './held-parts';
import { boxesOf, partsOf, valueOf } from './number-boxes';
import { readTypedNumber } from './read-number';
import { rangeInWords } from './say-value';

/** What stands in the boxes of a number question, by name of the box. */
export type Typed = Readonly<Record<string, string>>;
/** What they mean, by input, in the unit that is stored; an empty field has no number. */
export type Numbers = Readonly<Record<string, number | undefined>>;
/** What is wrong with one box, and what would be right. */
export interface BoxFault { readonly box: string; readonly message: string }

/**
 * Reads the boxes of one question: each field empty, or a number within its range, a part never more than its whole.
 * @param fields those that are asked for
 * @param typed as it was typed; a box that is not there is empty
 */
export function readBoxes(fields: readonly NumberField[], typed: Typed): { readonly numbers: Numbers; readonly faults: readonly BoxFault[] } {
  const faults: BoxFault[] = [];
  const fault = (box: string, message: string): undefined => { faults.push({ box, message }); return undefined; };
  const numbers = Object.fromEntries(fields.map((field) => [field.input, readField(field, typed, fault)]));
  for (const { path, expected } of partFaults(fields, new Map(Object.entries(numbers)))) fault(String(path[0]), `Enter ${expected}`);
  for (const { input, message } of partsAboveWhole(numbers)) fault(input, message);
  return { numbers, faults };
}

/** The same as a schema, for a form in the browser. */
export function numberFormSchema(fields: readonly NumberField[]): z.ZodType<Numbers, Typed> {
  const boxes = fields.flatMap(boxesOf).map((box): [string, z.ZodType<string, string>] => [box.name, z.string()]);
  return z.object(Object.fromEntries(boxes)).transform((typed, context) => {
    const { numbers, faults } = readBoxes(fields, typed);
    for (const { box, message } of faults) context.addIssue({ code: 'custom', path: [box], message });
    return numbers;
  });
}

function readField(field: NumberField, typed: Typed, fault: (box: string, message: string) => undefined): number | undefined {
  const boxes = boxesOf(field);
  const numbers: (number | undefined)[] = [];
  for (const { name } of boxes) {
    const text = typed[name] ?? '';
    const read = text.trim() === '' ? undefined : readTypedNumber(text);
    if (read?.ok === false) return fault(name, read.reason);
    if (read !== undefined && read.value < 0 && boxes.length > 1) return fault(name, 'Enter a number from 0');
    numbers.push(read?.value);
  }
  const value = valueOf(boxes, numbers);
  if (value === undefined || (value >= field.min && value <= field.max)) return value;
  return fault(boxes[0]?.name ?? field.input, `Enter ${rangeOf(field)}`);
}

function rangeOf({ min, max, unit, entry }: NumberField): string {
  if (entry === 'minutes and seconds') return `a time from ${timeWords(min)} to ${timeWords(max)}`;
  return entry === 'of ten' ? rangeInWords(min * 10, max * 10, '') : rangeInWords(min, max, unit);
}

const timeWords = (seconds: number): string => (seconds < 60 || seconds % 60 !== 0 ? `${seconds} seconds` : `${seconds / 60} ${seconds === 60 ? 'minute' : 'minutes'}`);

/** The boxes for an answer as it stands: digits without thousands marks, so that they can be read back. */
export function typedFrom(fields: readonly NumberField[], answer: Answer | undefined): Typed {
  const numbers = numbersIn(answer);
  return Object.fromEntries(fields.flatMap((field) => {
    const value = numbers[field.input];
    const parts = value === undefined ? [] : partsOf(field, value);
    return boxesOf(field).map((box, index): [string, string] => [box.name, parts[index] === undefined ? '' : plain(parts[index])]);
  }));
}

/** The numbers of an answer, none of another kind. */
export function numbersIn(answer: Answer | undefined): Numbers {
  if (typeof answer !== 'object' || Array.isArray(answer)) return {};
  return Object.fromEntries(Object.entries(answer).flatMap(([input, value]: [string, unknown]) => (typeof value === 'number' ? [[input, value]] : [])));
}

/** Never "1e-7": a person types digits. */
const plain = (value: number): string => (Math.abs(value) >= 1e-6 || value === 0 ? String(value) : value.toFixed(12).replace(/\.?0+$/, ''));

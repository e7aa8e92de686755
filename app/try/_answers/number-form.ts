import { z } from 'zod';
import type { NumberField } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { rangeInWords } from '@/lib/questionnaire/say-value';

/** What stands in the boxes of a number question. */
export type Typed = Readonly<Record<string, string>>;
/** What they mean; an empty box has no number. */
export type Numbers = Readonly<Record<string, number | undefined>>;

/** Reads the boxes of one question: each empty, or a number within its range. */
export function numberFormSchema(fields: readonly NumberField[]): z.ZodType<Numbers, Typed> {
  return z.object(Object.fromEntries(fields.map((field) => [field.input, boxSchema(field)])));
}

function boxSchema({ min, max, unit }: NumberField): z.ZodType<number | undefined, string> {
  return z.string().transform((typed, context) => {
    if (typed.trim() === '') return undefined;
    const read = readTypedNumber(typed);
    if (read.ok && read.value >= min && read.value <= max) return read.value;
    context.addIssue({ code: 'custom', message: read.ok ? `Enter ${rangeInWords(min, max, unit)}` : read.reason });
    return z.NEVER;
  });
}

/** The boxes for an answer as it stands: digits without thousands marks, so that they can be read back. */
export function typedFrom(fields: readonly NumberField[], answer: Answer | undefined): Typed {
  const numbers = typeof answer === 'object' && !Array.isArray(answer) ? (answer as Readonly<Record<string, number>>) : {};
  return Object.fromEntries(fields.map(({ input }) => [input, numbers[input] === undefined ? '' : plain(numbers[input])]));
}

/** Never "1e-7": a person types digits. */
const plain = (value: number): string => (Math.abs(value) >= 1e-6 || value === 0 ? String(value) : value.toFixed(12).replace(/0+$/, ''));

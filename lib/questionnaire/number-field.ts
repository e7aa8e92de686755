import { z } from 'zod';
import { readTypedNumber } from './read-number';
import { rangeInWords } from './say-value';

export interface TypedRange {
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  readonly whole?: boolean;
}

/** A number as it is typed into a form, with a decimal point or comma; must be there. */
export function typedNumber(missing: string, range: TypedRange) {
  return z.string({ error: missing }).trim().min(1, missing).transform((text, context) => numberOf(text, range, context));
}

/** A number as it is typed into a form; left empty it is null, never 0. */
export function optionalTypedNumber(range: TypedRange) {
  return z.string().trim().nullish().transform((text, context) => (text === undefined || text === null || text === '' ? null : numberOf(text, range, context)));
}

function numberOf(text: string, { least, most, unit, whole = false }: TypedRange, context: z.RefinementCtx): number {
  const read = readTypedNumber(text);
  const message = !read.ok ? read.reason
    : read.value < least || read.value > most ? `Enter ${rangeInWords(least, most, unit)}`
      : whole && !Number.isInteger(read.value) ? 'Enter a whole number'
        : null;
  if (read.ok && message === null) return read.value;
  context.addIssue({ code: 'custom', message: message ?? '', input: text });
  return z.NEVER;
}

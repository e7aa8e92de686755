import { z } from 'zod';

/** More than any name or address needs, and little enough to store and show. */
const LONGEST_LINE = 200;
const LONGEST_TEXT = 4000;

/** A line that must hold something; spaces at its ends are dropped. */
export function line(missing: string, longest = LONGEST_LINE) {
  return z.string({ error: missing }).trim().min(1, missing).max(longest, `Use at most ${longest} characters`);
}

/** A line that may be left empty: then null. */
export function optionalLine(longest = LONGEST_LINE) {
  return z.string().trim().max(longest, `Use at most ${longest} characters`).nullish().transform(emptyIsNull);
}

/** Several lines that may be left empty: then null. */
export function optionalText(longest = LONGEST_TEXT) {
  return optionalLine(longest);
}

/** An e-mail address, lower-cased, so that one mailbox is one account. */
export function emailAddress(missing: string) {
  return z.string({ error: missing }).trim().toLowerCase().min(1, missing).max(254, 'This is too long for an e-mail address').pipe(z.email('Write the address with an @ and the part after it, such as name@school.example'));
}

/** A field that may be left empty: then null; what is in it is read by `schema`. */
export function optional<Schema extends z.ZodType>(schema: Schema) {
  return z.union([z.string().trim().length(0).nullish().transform(() => null), schema]);
}

/** One of a few values; the message also stands for a value that was never offered. */
export function oneOf<const Values extends readonly [string, ...string[]]>(values: Values, missing: string) {
  return z.enum(values, { error: missing });
}

/** A list out of boxes of one name: none ticked sends nothing, one ticked sends a single value. */
export function listOf<Item extends z.ZodType>(item: Item) {
  return z.preprocess((value): unknown => (value === undefined ? [] : [value].flat()), z.array(item));
}

function emptyIsNull(text: string | null | undefined): string | null {
  return text === undefined || text === null || text === '' ? null : text;
}

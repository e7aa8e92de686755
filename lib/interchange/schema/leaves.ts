import { z } from 'zod';

/*
 * Pieces of the document. The message of each says what would be right, never what is wrong: what is wrong is
 * read from the value itself, so that every fault has both.
 */

/** Control characters, line and paragraph separators, and marks that turn the direction of text around. */
const NO_CONTROL_CHARACTER = /^[^\p{Cc}\u2028-\u202e\u2066-\u2069]*$/u;
const NO_CONTROL_BUT_LINES = /^(?:[^\p{Cc}\u2028-\u202e\u2066-\u2069]|\n)*$/u;
const NUMBER = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 6 });

/** One line of text, without control characters: it is printed on terminals. */
export function line(most: number) {
  const error = `one line of plain text of 1 to ${most} characters`;
  return z.string({ error }).min(1, { error }).max(most, { error }).regex(NO_CONTROL_CHARACTER, { error });
}

/** Text that may have several lines. */
export function lines(most: number) {
  const error = `text of at most ${NUMBER.format(most)} characters`;
  return z.string({ error }).max(most, { error }).regex(NO_CONTROL_BUT_LINES, { error });
}

/** A number from least to most, both allowed. */
export function between(least: number, most: number, unit = '') {
  const error = `a number from ${NUMBER.format(least)} to ${NUMBER.format(most)}${unit === '' ? '' : ` ${unit}`}`;
  return z.number({ error }).min(least, { error }).max(most, { error });
}

/** A number above least, up to most. */
export function above(least: number, most: number) {
  const error = `a number above ${NUMBER.format(least)}, at most ${NUMBER.format(most)}`;
  return z.number({ error }).gt(least, { error }).max(most, { error });
}

/** A whole number from least to most. */
export function whole(least: number, most: number) {
  const error = `a whole number from ${NUMBER.format(least)} to ${NUMBER.format(most)}`;
  return z.int({ error }).min(least, { error }).max(most, { error });
}

export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words) {
  return z.enum(words, { error: `one of ${words.map((word) => `"${word}"`).join(', ')}` });
}

export function list<Item extends z.ZodType>(item: Item, least: number, most: number, what: string) {
  const size = least === most ? `exactly ${most}` : least === 0 ? `at most ${most}` : `${least} to ${most}`;
  const error = `a list of ${size} ${what}`;
  return z.array(item, { error }).min(least, { error }).max(most, { error });
}

/** An object whose names are ids of the content; whether they exist is checked against the edition. */
export function byId<Value extends z.ZodType>(value: Value, what: string) {
  return z.record(z.string(), value, { error: `an object { } with ${what}` });
}

const LONGEST = 40;

/** Characters that would steer a terminal or turn the direction of text around. */
const UNPRINTABLE = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
const inCode = (character: string): string => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** @returns text in quotes, safe to print on one line of a terminal, cut when it is long */
export function quoted(text: string): string {
  const letters = [...text];
  const shown = letters.length > LONGEST ? `${letters.slice(0, LONGEST).join('')}…` : text;
  return JSON.stringify(shown).replace(UNPRINTABLE, inCode);
}

/** @returns what a value of a document is, as the problem of a fault: "is 12", "is a list", "is missing" */
export function sayValue(value: unknown): string {
  if (value === undefined) return 'is missing';
  if (value === null) return 'is null';
  if (typeof value === 'string') return `is the text ${quoted(value)}`;
  if (typeof value === 'number' || typeof value === 'boolean') return `is ${value}`;
  return Array.isArray(value) ? 'is a list' : 'is an object';
}

/** @returns words in quotes with commas between, for "one of …" */
export function listed(words: readonly string[]): string {
  return words.map(quoted).join(', ');
}

/** Units that say what kind of number it is, not what it counts. */
const UNSPOKEN_UNITS = ['', '-', 'share', '0 or 1'];
const NUMBER = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 6 });

/** @returns a number from least to most with its unit, as what would be right */
export function rangeInWords(least: number, most: number, unit: string): string {
  return `a number from ${NUMBER.format(least)} to ${NUMBER.format(most)}${UNSPOKEN_UNITS.includes(unit) ? '' : ` ${unit}`}`;
}

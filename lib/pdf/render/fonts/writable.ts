import { loadFonts } from './load-fonts';

/** Characters that show nothing of their own and need no glyph: line ends, tabs, joiners, marks of direction. */
const WITHOUT_GLYPH = /^[\n\r\t\u00ad\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufe00-\ufe0f\ufeff]$/;

/**
 * The text as it can be set: a character that no font has is written as its number, as [U+20BB7], because the PDF
 * writer would leave it out without a word.
 */
export function writableText(text: string): string {
  const fonts = loadFonts();
  return Array.from(text, (character) => {
    const codePoint = character.codePointAt(0) ?? 0;
    if (WITHOUT_GLYPH.test(character) || fonts.some(({ font }) => font.hasGlyphForCodePoint(codePoint))) return character;
    return `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
  }).join('');
}

/** A plain view model with every text made writable; dates, bytes and numbers stay as they are. */
export function writableModel<Model>(model: Model): Model {
  return mapTexts(model) as Model;
}

function mapTexts(value: unknown): unknown {
  if (typeof value === 'string') return writableText(value);
  if (Array.isArray(value)) return value.map(mapTexts);
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, mapTexts(part)]));
}

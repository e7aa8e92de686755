import { PLAIN_ZERO } from './font-files';
import { loadFonts } from './load-fonts';

/** A piece of a text and the fonts to look its characters up in, the best one first. */
export interface SetPiece { readonly text: string; readonly families: string[] }

/**
 * A text in pieces of whole words, each in the first font that has all of its characters: left alone, the PDF
 * writer changes the font inside a word, and then takes that place for one where the word may be broken.
 */
export function fontsForWords(text: string): readonly SetPiece[] {
  const pieces: SetPiece[] = [];
  for (const word of text.split(/(?<= )(?=[^ ])/)) {
    const families = familiesFor(word);
    const last = pieces.at(-1);
    if (last !== undefined && last.families[0] === families[0]) pieces[pieces.length - 1] = { text: last.text + word, families };
    else pieces.push({ text: word, families });
  }
  return pieces;
}

/** A number to be dialled, in the font whose zero cannot be taken for another sign; where that lacks a sign of it, like other words. */
export function fontsForDialling(number: string): readonly SetPiece[] {
  const families = loadFonts().map(({ family }) => family);
  const plain = loadFonts().find(({ family }) => family === PLAIN_ZERO);
  const whole = plain !== undefined && Array.from(number).every((character) => plain.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
  return whole ? [{ text: number, families: [PLAIN_ZERO, ...families.filter((family) => family !== PLAIN_ZERO)] }] : fontsForWords(number);
}

function familiesFor(word: string): string[] {
  const fonts = loadFonts();
  const characters = Array.from(word, (character) => character.codePointAt(0) ?? 0).filter((codePoint) => codePoint >= 0x20);
  const first = Math.max(0, fonts.findIndex(({ font }) => characters.every((codePoint) => font.hasGlyphForCodePoint(codePoint))));
  return [...fonts.slice(first), ...fonts.slice(0, first)].map(({ family }) => family);
}

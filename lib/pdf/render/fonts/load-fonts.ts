import { Font } from '@react-pdf/renderer';
import { create, type Font as FontkitFont } from 'fontkit';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { FONT_FILES, type FontFiles } from './font-files';
import { isWoff, woffToSfnt } from './woff-to-sfnt';

const require = createRequire(import.meta.url);

export interface PaperFont { readonly family: string; readonly font: FontkitFont }

/** Fonts larger than this are not warmed; the only one has no glyph that is made of others. */
const MOST_WARMED = 10_000;

let loaded: readonly PaperFont[] | undefined;

/**
 * Makes the fonts of FONT_FILES known to the PDF writer, once in a process, and returns the regular ones in their
 * order. Must be called before anything is rendered: a text set earlier would be in another font, without a word.
 */
export function loadFonts(): readonly PaperFont[] {
  loaded ??= loadAll();
  return loaded;
}

function loadAll(): readonly PaperFont[] {
  // Words stay whole: the writer would break them by English rules.
  Font.registerHyphenationCallback((word) => [word]);
  return FONT_FILES.map((files) => {
    const font = loadWeight(files, 400);
    loadWeight(files, 700);
    return { family: files.family, font };
  });
}

function loadWeight(files: FontFiles, weight: 400 | 700): FontkitFont {
  const file = require.resolve(weight === 400 ? files.regular : files.bold);
  const bytes = readFileSync(file);
  const font = create(isWoff(bytes) ? woffToSfnt(bytes) : bytes);
  if ('fonts' in font) throw new Error('a file with more than one font');
  warm(font);
  Font.register({ family: files.family, src: file, fontWeight: weight });
  const source = Font.getFont({ fontFamily: files.family, fontWeight: weight });
  source.data = Object.assign(font, { type: 'TTF' as const });
  source.loadResultPromise = Promise.resolve();
  return font;
}

/**
 * Looks up each character once. A glyph made of others, as é, would else be the first to make those, without a
 * character of their own, and every later document of the process would lose their letters when its text is read
 * out: the page says "Łukasz", the text "kasz".
 */
function warm(font: FontkitFont): void {
  if (font.characterSet.length > MOST_WARMED) return;
  for (const character of font.characterSet) font.glyphForCodePoint(character);
}

import { Font } from '@react-pdf/renderer';
import { create, type Font as FontkitFont } from 'fontkit';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { FONT_FILES, type FontFiles } from './font-files';
import { woffToSfnt } from './woff-to-sfnt';

const require = createRequire(import.meta.url);
const WEIGHTS = [400, 700] as const;
/** Everything that is in a typeface and no more; the last resort alone has more, and none of its glyphs is made of others. */
const MOST_WARMED = 10_000;

let loaded: readonly FontkitFont[] | undefined;

/**
 * Makes the fonts of FONT_FILES known to the PDF writer, once in a process, and returns the regular ones in their
 * order. Must be awaited before anything is rendered: a text set earlier would be in another font, without a word.
 */
export function loadFonts(): readonly FontkitFont[] {
  loaded ??= FONT_FILES.map((files) => {
    const [regular] = WEIGHTS.map((weight) => loadWeight(files, weight));
    if (regular === undefined) throw new Error('a font without a weight');
    return regular;
  });
  // Words are broken where they are written with a break, not by English rules.
  Font.registerHyphenationCallback((word) => [word]);
  return loaded;
}

function loadWeight(files: FontFiles, weight: (typeof WEIGHTS)[number]): FontkitFont {
  const file = require.resolve(weight === 400 ? files.regular : files.bold);
  const font = create(woffToSfnt(readFileSync(file)));
  if ('fonts' in font) throw new Error('a file with more than one font');
  if (files.distinct !== undefined) Object.defineProperty(font, 'postscriptName', { value: `${font.postscriptName}-${files.distinct}` });
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

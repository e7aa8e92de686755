/** A font for paper: one file for each weight. A font of one weight is used for both. */
export interface FontFiles {
  readonly family: string;
  readonly regular: string;
  readonly bold: string;
  /** its own name inside a PDF, where files of one typeface share theirs: else one is taken for the other */
  readonly distinct?: string;
}

const ATKINSON = '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next';
const DEJAVU = '@fontsource/dejavu-sans/files/dejavu-sans-latin';
const UNIFONT = '@fontsource/unifont/files/unifont-latin-400-normal.woff';

/**
 * In the order in which a character looks for its glyph: the typeface of the screen with its second file for
 * letters such as Ł and ő; a typeface with Greek, Cyrillic, Arabic, Hebrew and signs such as ≤; and one, plain,
 * with nearly every other character there is, so that no name is left blank. All three may be embedded: SIL Open
 * Font License, and for the second the licence of Bitstream Vera.
 */
export const FONT_FILES: readonly FontFiles[] = [
  { family: 'Atkinson Hyperlegible Next', regular: `${ATKINSON}-latin-400-normal.woff`, bold: `${ATKINSON}-latin-700-normal.woff` },
  { family: 'Atkinson Hyperlegible Next, more letters', regular: `${ATKINSON}-latin-ext-400-normal.woff`, bold: `${ATKINSON}-latin-ext-700-normal.woff`, distinct: 'MoreLetters' },
  { family: 'DejaVu Sans', regular: `${DEJAVU}-400-normal.woff`, bold: `${DEJAVU}-700-normal.woff` },
  { family: 'Unifont', regular: UNIFONT, bold: UNIFONT },
];

/** What every text on paper is set in. */
export const PAPER_FONTS: string[] = FONT_FILES.map(({ family }) => family);

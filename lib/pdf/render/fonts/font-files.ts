/** A font for paper: one file for each weight. A font of one weight is used for both. */
export interface FontFiles {
  readonly family: string;
  readonly regular: string;
  readonly bold: string;
}

const ATKINSON = '@expo-google-fonts/atkinson-hyperlegible-next';
const DEJAVU = '@fontsource/dejavu-sans/files/dejavu-sans-latin';
const UNIFONT = '@fontsource/unifont/files/unifont-latin-400-normal.woff';

/**
 * In the order in which a word looks for its font: the typeface of the screen, whole, for all languages in Latin
 * letters; one with Greek, Cyrillic, Arabic, Hebrew and signs such as ≤; and one, plain, with nearly every other
 * character there is, so that no name is left blank. All three may be embedded: SIL Open Font License, and for the
 * second the licence of Bitstream Vera.
 */
export const FONT_FILES: readonly FontFiles[] = [
  { family: 'Atkinson Hyperlegible Next', regular: `${ATKINSON}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`, bold: `${ATKINSON}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf` },
  { family: 'DejaVu Sans', regular: `${DEJAVU}-400-normal.woff`, bold: `${DEJAVU}-700-normal.woff` },
  { family: 'Unifont', regular: UNIFONT, bold: UNIFONT },
];

/** The first of them has a slashed zero, and no other. This one has a plain one, for numbers to be dialled. */
export const PLAIN_ZERO = 'DejaVu Sans';

/** What every text on paper is set in. */
export const PAPER_FONTS: string[] = FONT_FILES.map(({ family }) => family);

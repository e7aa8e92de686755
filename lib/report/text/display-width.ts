/** Letters that a terminal draws two columns wide: East Asian wide and full-width forms, and pictures. */
const WIDE = /^(?:[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}|.\ufe0f)/u;
const NOTHING = /^[\p{Mn}\p{Me}\p{Cf}]+$/u;
const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** @returns the signs of a text as people count them: a letter with its accents is one */
export function signsOf(text: string): readonly string[] {
  return [...segmenter.segment(text)].map(({ segment }) => segment);
}

/**
 * Columns that a text takes on a terminal: two for a wide letter, none for accents that stand on another one.
 * Letters that are wide in East Asian fonts only, such as ▲, count as one, as they do everywhere else.
 */
export function displayWidth(text: string): number {
  return signsOf(text).reduce((sum, sign) => sum + signWidth(sign), 0);
}

/** Columns of one sign: 0, 1 or 2. */
export function signWidth(sign: string): number {
  if (NOTHING.test(sign)) return 0;
  return WIDE.test(sign) ? 2 : 1;
}

import { displayWidth, signsOf, signWidth } from './display-width';

/** Columns of a terminal that is as narrow as they come. */
export const PAGE_WIDTH = 80;

/**
 * Breaks text into lines of at most `width` columns, between words where that is possible.
 * @returns one line at least; no line is wider
 */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const piece of text.split(/\s+/).filter((word) => word !== '').flatMap((word) => pieces(word, width))) {
    const longer = line === '' ? piece : `${line} ${piece}`;
    if (displayWidth(longer) <= width) { line = longer; continue; }
    lines.push(line);
    line = piece;
  }
  return [...lines, line];
}

/** A word as it is, or in pieces when it is wider than a line. */
function pieces(word: string, width: number): readonly string[] {
  if (displayWidth(word) <= width) return [word];
  const parts = [''];
  for (const sign of signsOf(word)) {
    const last = parts.at(-1) ?? '';
    if (last !== '' && displayWidth(last) + signWidth(sign) > width) parts.push(sign);
    else parts[parts.length - 1] = last + sign;
  }
  return parts;
}

/** Text behind a lead that stands on the first line only; the others begin beneath the text. */
export function hanging(lead: string, text: string): readonly string[] {
  const indent = displayWidth(lead);
  return wrap(text, PAGE_WIDTH - indent).map((line, at) => `${at === 0 ? lead : ' '.repeat(indent)}${line}`);
}

/** Text filled up with blanks to a number of columns. */
export function padded(text: string, width: number): string {
  return `${text}${' '.repeat(Math.max(0, width - displayWidth(text)))}`;
}

/** A blank line, the words in capitals, and a rule. */
export function heading(text: string): readonly string[] {
  return ['', text.toUpperCase(), '-'.repeat(PAGE_WIDTH)];
}

import { hanging, heading } from './layout';

/** Something that stands on paper and changes no figure. */
export interface PrintedLine {
  readonly title: string;
  readonly words: string;
  /** nobody has said it, or nobody has asked */
  readonly open: boolean;
}

/** What the edition has only for the paper, as it was answered; what is still open is marked. */
export function printedLines(printed: readonly PrintedLine[]): readonly string[] {
  if (printed.length === 0) return [];
  return [...heading('Printed as answered, changes no figure'), ...printed.flatMap(({ title, words, open }) => hanging(open ? ' ?  ' : ' -  ', `${title}: ${words}`))];
}

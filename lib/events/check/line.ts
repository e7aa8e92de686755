import type { Said } from '../choices';

/** Parts of the check, in the order they are shown. */
export const CHECK_GROUPS = ['place', 'packs', 'people', 'there', 'road', 'air'] as const;
export type CheckGroup = (typeof CHECK_GROUPS)[number];

export const GROUP_TITLES: Readonly<Record<CheckGroup, string>> = {
  place: 'The place and its assessment',
  packs: 'The packs',
  people: 'The people',
  there: 'At the venue',
  road: 'By road',
  air: 'By air',
};

/** `not known` never passes: nobody leaves on what nobody looked at. */
export type LineState = 'ok' | 'failing' | 'not known';

/** One line of the check before an event leaves. */
export interface CheckLine {
  readonly id: string;
  readonly group: CheckGroup;
  readonly state: LineState;
  /** what was found */
  readonly words: string;
  /** how to mend it; null when there is nothing to mend */
  readonly mend: string | null;
  /** where it is mended; null when it is not mended in this program */
  readonly link: `/${string}` | null;
  /** whether the officer may let it stand in writing */
  readonly mayBeAccepted: boolean;
}

/** What a line says in each state; the mending is said of those that do not pass. */
export interface LineWords {
  readonly id: string;
  readonly group: CheckGroup;
  readonly link: `/${string}` | null;
  readonly mayBeAccepted: boolean;
}

export const passes = (line: LineWords, words: string): CheckLine => ({ ...line, state: 'ok', words, mend: null, mayBeAccepted: false });
export const fails = (line: LineWords, words: string, mend: string): CheckLine => ({ ...line, state: 'failing', words, mend });
export const unknown = (line: LineWords, words: string, mend: string): CheckLine => ({ ...line, state: 'not known', words, mend });

/** A thing that is done or not: only a whole yes passes. */
export function saidLine(line: LineWords, said: Said | null, words: { readonly good: string; readonly open: string; readonly bad: string; readonly mend: string }): CheckLine {
  if (said === 'yes') return passes(line, words.good);
  if (said === null || said === 'not-sure') return unknown(line, words.open, words.mend);
  return fails(line, said === 'partly' ? `Only partly: ${words.bad}` : capital(words.bad), words.mend);
}

/** Labels in a row, "W-01, W-02 and 3 more": enough to find them by. */
export function labels(all: readonly string[], most = 12): string {
  const [shown, more] = [all.slice(0, most), all.length - most];
  if (more > 0) return `${shown.join(', ')} and ${more} more`;
  const last = shown.at(-1) ?? '';
  return shown.length < 2 ? last : `${shown.slice(0, -1).join(', ')} and ${last}`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

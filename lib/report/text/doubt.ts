import type { Content } from '@/lib/content/model';
import type { DoubtResult, ScoreResult } from '@/lib/core/result';
import { inputWords } from '@/lib/wording/input-words';
import { rounded } from '@/lib/wording/numbers';
import { hanging, heading } from './layout';

const MOST = 5;

/** What somebody can go and look up, widest first, and the figures of ours that widen the total most. */
export function doubtLines({ doubt }: ScoreResult): readonly string[] {
  const own = doubt.filter(({ canBeChecked }) => !canBeChecked).slice(0, 2);
  const checkable = doubt.filter(({ canBeChecked }) => canBeChecked).slice(0, MOST);
  return [
    ...heading('What would reduce doubt'),
    ...(checkable.length === 0 ? ['Every answer is known.'] : checkable.flatMap((item) => hanging(' *  Find out: ', lineOn(item)))),
    ...own.flatMap((item) => hanging(' -  Ours:     ', lineOn(item))),
  ];
}

function lineOn({ title, between, harmLow, harmHigh }: DoubtResult): string {
  return `${title} (${between}): total harm ${rounded(harmLow)} to ${rounded(harmHigh)}`;
}

/** Inputs that stand on an assumption because nobody gave them; those that are only printed have a list of their own. */
export function assumedLines({ assumedInputs }: ScoreResult, content: Content): readonly string[] {
  const printed = new Set(content.inputs.filter((input) => input.printed === true).map(({ id }) => id));
  const assumed = assumedInputs.filter(({ input }) => !printed.has(input));
  if (assumed.length === 0) return [];
  return [...heading('Assumed, because it was not given'), ...assumed.flatMap(({ input, title, value, unit, because }) =>
    hanging(' -  ', `${title}: ${inputWords(content, input, value, unit)} (${because})`))];
}

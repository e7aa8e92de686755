import type { DoubtResult, ScoreResult } from '@/lib/core/result';
import { exact, rounded } from '@/lib/wording/numbers';
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

/** Inputs that stand on an assumption because nobody gave them. */
export function assumedLines({ assumedInputs }: ScoreResult): readonly string[] {
  if (assumedInputs.length === 0) return [];
  return [...heading('Assumed, because it was not given'), ...assumedInputs.flatMap(({ title, value, unit, because }) =>
    hanging(' -  ', `${title}: ${valueText(value, unit)} (${because})`))];
}

const NO_UNIT = ['word', 'text', '0 or 1', 'light, ordinary or heavy', 'share', '-'];
function valueText(value: number | string, unit: string): string {
  if (unit === '0 or 1') return value === 0 ? 'no' : 'yes';
  const shown = typeof value === 'number' ? exact(value) : value === '' ? 'none' : value;
  return NO_UNIT.includes(unit) ? shown : `${shown} ${unit}`;
}

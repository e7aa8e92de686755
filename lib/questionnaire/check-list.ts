import type { AnswerOption, TickLine } from '@/lib/content/model';
import { type AnswerCheck, type AnswerFault, wrong } from './answer-fault';
import { listed, quoted, sayValue } from './say-value';

type Listable = AnswerOption | TickLine;

/** A list of ids of what is true. On a page of ticks, a list says nothing of a line that came later: it must not seem to. */
export function checkList(options: readonly Listable[], raw: readonly unknown[]): AnswerCheck {
  const faults = raw.flatMap((item, at): readonly AnswerFault[] => {
    const fault = itemFault(options, item) ?? (raw.indexOf(item) < at ? { problem: `is ${sayItem(item)} a second time`, expected: 'each option at most once' } : undefined);
    return fault === undefined ? [] : [{ path: [at], ...fault }];
  });
  return faults.length > 0 ? wrong(...faults) : { ok: true, answer: raw.filter((item) => typeof item === 'string') };
}

function itemFault(options: readonly Listable[], item: unknown): Omit<AnswerFault, 'path'> | undefined {
  const option = options.find(({ id }) => id === item);
  if (option === undefined) return { problem: sayValue(item), expected: `one of ${listed(options.filter((each) => !isLater(each)).map(({ id }) => id))}` };
  if (!isLater(option)) return undefined;
  return { problem: `${sayValue(item)}, a line that no list had`, expected: `a word for each line instead of a list, such as {${quoted(option.id)}: "yes"}` };
}

const isLater = (option: Listable): boolean => 'newIn' in option && option.newIn !== undefined;
const sayItem = (item: unknown): string => (typeof item === 'string' ? quoted(item) : String(item));

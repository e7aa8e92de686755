import { type AnswerCheck, type AnswerFault, NOT_SURE, wrong } from './answer-fault';
import { checkList } from './check-list';
import { nearest } from './nearest';
import { listed, quoted, sayValue } from './say-value';
import { isTickSaid, TICK_WORDS, type TickQuestion, type TickSaid } from './ticks';

/** A page of ticks: a word for each line, or the plain list that an earlier edition took. */
export function checkTicks(question: TickQuestion, raw: unknown): AnswerCheck {
  if (Array.isArray(raw)) return checkList(question.options, raw);
  const ids = question.options.map(({ id }) => id);
  if (typeof raw !== 'object' || raw === null) {
    return wrong({ path: [], problem: sayValue(raw), expected: `an object with ${WORDS} for any of ${listed(ids)}, or "${NOT_SURE}" for them all` });
  }
  const faults: AnswerFault[] = [];
  const lines = new Map<string, TickSaid>();
  for (const [line, said] of Object.entries(raw)) {
    if (!ids.includes(line)) faults.push({ path: [line], problem: 'is not a line of this question', expected: lineMeant(line, ids) });
    else if (isTickSaid(said)) lines.set(line, said);
    else faults.push({ path: [line], problem: sayValue(said), expected: `one of ${listed(TICK_WORDS)}` });
  }
  return faults.length > 0 ? wrong(...faults) : { ok: true, answer: Object.fromEntries(lines) };
}

const WORDS = '"yes", "partly", "no" or "not sure"';

function lineMeant(line: string, ids: readonly string[]): string {
  const meant = nearest(line, ids);
  return meant === undefined ? `one of ${listed(ids)}` : `${quoted(meant)} was probably meant`;
}

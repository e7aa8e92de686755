import type { Block } from '../paper';
import type { EventAreaFact, EventConditionFact, EventLineFact } from './facts';

/** Loud, so that nobody takes a gap for an answer. */
export const NOT_FILLED_IN = 'NOT FILLED IN';

/** What an area is for, in a word or two of ours: names that people typed come beside it. */
export const AREA_WORDS: Readonly<Record<EventAreaFact['use'], string>> = { charging: 'charging', storage: 'store', arena: 'arena', isolation: 'outdoor spot for suspect packs', disposal: 'collection of old packs' };

/** What was written, or that nothing was. */
export function said(value: string | number | null): string {
  return value === null || value === '' ? NOT_FILLED_IN : String(value);
}

/** Lines as they were asked, each with what was written for it. */
export function linesOf(lines: readonly EventLineFact[]): Block {
  return { kind: 'facts', rows: lines.map(({ name, value }) => ({ name, value: said(value) })) };
}

/** What was asked for, and how it stands. */
export function conditionsTable(caption: string, conditions: readonly EventConditionFact[], empty: string): Block {
  return { kind: 'table', caption, columns: [{ head: 'What', width: 7 }, { head: 'State', width: 1.4 }], rows: conditions.map(({ words, said: state }) => [words, state]), empty };
}

/** "one pack", "3 packs" */
export const counted = (count: number, one: string, many: string): string => (count === 1 ? `one ${one}` : `${count} ${many}`);

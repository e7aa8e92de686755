import type { Surroundings } from '@/lib/charts/heat-distances';
import type { DocumentParts } from './document-parts';

const QUESTION = 'table-distances';

/** What stands around the charging table, as far as somebody said it. What was not said is not drawn. */
export function surroundingsOf({ answers, inputs = {} }: DocumentParts): Surroundings {
  const answer = answers[QUESTION];
  const given = typeof answer === 'object' && !Array.isArray(answer) ? (answer as Readonly<Record<string, number>>) : {};
  const distance = (input: string): number | null => {
    const value = inputs[input] ?? given[input];
    return typeof value === 'number' ? value : null;
  };
  return { person: distance('personDistance'), combustible: distance('combustibleDistance'), clearHeight: distance('clearHeight') };
}

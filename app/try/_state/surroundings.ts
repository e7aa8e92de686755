import type { Surroundings } from '@/lib/charts/heat-distances';
import { answerOf, partOf, type WholeDocument } from './whole-document';

const QUESTION = 'table-distances';

/** What stands around the charging table, as far as somebody said it. What was not said is not drawn. */
export function surroundingsOf(whole: WholeDocument): Surroundings {
  const answer = answerOf(whole, QUESTION);
  const given = typeof answer === 'object' && !Array.isArray(answer) ? (answer as Readonly<Record<string, number>>) : {};
  const written = partOf(whole, 'inputs');
  const distance = (input: string): number | null => {
    const value = written[input] ?? given[input];
    return typeof value === 'number' ? value : null;
  };
  return { person: distance('personDistance'), combustible: distance('combustibleDistance'), clearHeight: distance('clearHeight') };
}

import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { Answer } from '@/lib/core/document';
import type { ClosedEvaluation } from '@/lib/core/risk/closed-form';
import { GRADES } from '@/lib/core/risk/grade-matrix';
import { secondDocument } from '../../../support/edition-2-venues';
import { noMoreThan, ready } from '../../../support/evaluate';

/** Fields that say how much goes on, not how well: more of them is exposure, in either venue (amendment A29). */
const HOW_MUCH = new Set(['team-packs', 'team-people', 'team-use', 'travel-trips', 'damaged-number', 'room-people', 'table-packs', 'store-packs', 'store-near-people', 'electric-load']);
/** What is one matter and moves together: an answer, and the questions it opens or closes (amendment A29). */
const TOGETHER: readonly (readonly string[])[] = [
  ['room-where', 'room-size', 'room-air', 'room-ach', 'room-fan', 'room-window'],
  ['store-where', 'store-size', 'store-air'],
  ['routine-attended', 'routine-overnight'],
  ['people-needs', 'people-help', 'people-breathing'],
  ['travel-kind', 'travel-vehicle'],
];
/** Of a pack on charge that is watched now and was left alone before, only both risks together can be compared. */
const CHARGED = ['charge-runaway', 'charge-unwatched'];

const [bad, good] = [secondDocument('bad-store'), secondDocument('good-hall')];
const alone = edition2.questions.map(({ id }) => id).filter((id) => !HOW_MUCH.has(id) && !TOGETHER.some((set) => set.includes(id)));
const moves = [...alone.map((id) => [id]), ...TOGETHER].filter((ids) => ids.some((id) => JSON.stringify(bad.answers[id]) !== JSON.stringify(good.answers[id])));

const harmOf = (evaluation: ClosedEvaluation, ids: readonly string[]): number =>
  ids.reduce((sum, id) => sum + (evaluation.risks[edition2.scenarios.findIndex((one) => one.id === id)]?.harm ?? Number.NaN), 0);

describe('from the bad store to the good hall, under the second edition', () => {
  const before = ready(bad, edition2).today;
  const others = edition2.scenarios.map(({ id }) => id).filter((id) => !CHARGED.includes(id));

  it('is a way of many steps', () => { expect(moves.length).toBeGreaterThan(65); });

  it.each(moves.map((ids) => [ids.join(' and '), ids] as const))('answering %s as in the good hall raises no risk', (_, ids) => {
    const changed = Object.fromEntries(ids.map((id): [string, Answer | undefined] => [id, good.answers[id]]));
    const answers = Object.fromEntries(Object.entries({ ...bad.answers, ...changed }).filter((entry): entry is [string, Answer] => entry[1] !== undefined));
    const after = ready({ ...bad, answers }, edition2).today;
    for (const risks of [CHARGED, ...others.map((id) => [id])]) expect(noMoreThan(harmOf(after, risks), harmOf(before, risks)), `${risks.join(' and ')} rose`).toBe(true);
    edition2.scenarios.forEach(({ id }, index) => {
      if (!CHARGED.includes(id)) expect(GRADES.indexOf(after.risks[index]?.grade as 'low'), id).toBeLessThanOrEqual(GRADES.indexOf(before.risks[index]?.grade as 'low'));
    });
  });
});

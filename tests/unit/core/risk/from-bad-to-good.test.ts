import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { Answer } from '@/lib/core/document';
import { GRADES } from '@/lib/core/risk/grade-matrix';
import { noMoreThan, ready } from '../../../support/evaluate';
import { referenceDocument, scoreReference } from '../../../support/reference-venues';

/** Fields that say how much goes on, not how well: more of them is exposure, in either venue (amendment A29). */
const HOW_MUCH = new Set(['team-packs', 'team-people', 'team-use', 'travel-trips', 'damaged-number', 'room-people', 'table-packs', 'store-packs', 'team-limit', 'electric-load']);
/** The air and its figure are one matter and move together (amendment A29). */
const TOGETHER: readonly (readonly string[])[] = [['room-where', 'room-size', 'room-air', 'room-ach', 'room-fan', 'room-window']];

const bad = referenceDocument('bad-store');
const good = referenceDocument('good-hall');
const alone = edition1.questions.map((question) => question.id).filter((id) => !HOW_MUCH.has(id) && !TOGETHER.some((set) => set.includes(id)));
const moves = [...alone.map((id) => [id]), ...TOGETHER].filter((ids) => ids.some((id) => JSON.stringify(bad.answers[id]) !== JSON.stringify(good.answers[id])));

describe('from the bad store to the good hall', () => {
  const before = ready(bad).today;

  it.each(moves.map((ids) => [ids.join(' and '), ids] as const))('answering %s as in the good hall raises no risk', (_, ids) => {
    const changed = Object.fromEntries(ids.map((id): [string, Answer | undefined] => [id, good.answers[id]]));
    const answers = Object.fromEntries(Object.entries({ ...bad.answers, ...changed }).filter((entry): entry is [string, Answer] => entry[1] !== undefined));
    const after = ready({ ...bad, answers }).today;
    after.risks.forEach((risk, index) => {
      const was = before.risks[index];
      expect(noMoreThan(risk.harm, was?.harm ?? 0), `${edition1.scenarios[index]?.id} rose`).toBe(true);
      expect(GRADES.indexOf(risk.grade as 'low')).toBeLessThanOrEqual(GRADES.indexOf((was?.grade ?? 'low') as 'low'));
    });
  });
});

describe('the reference venues keep their order', () => {
  const [hall, room, store] = (['good-hall', 'ordinary-classroom', 'bad-store'] as const).map((venue) => scoreReference(venue, 300));

  it('has every total rise from good to bad', () => {
    for (const figure of ['totalHarm', 'inherentHarm', 'batteryFiresPerSeason'] as const) {
      expect(hall?.[figure]).toBeLessThan(room?.[figure] ?? 0);
      expect(room?.[figure]).toBeLessThan(store?.[figure] ?? 0);
    }
  });

  it('finds the good hall in order: nothing high, no stop, fewer than 0.05 battery fires a season', () => {
    expect(hall?.risks.every((risk) => risk.grade !== 'high' && risk.grade !== 'extreme')).toBe(true);
    expect(hall?.stops).toEqual([]);
    expect(hall?.batteryFiresPerSeason).toBeLessThan(0.05);
  });

  it('finds several highs in the classroom, smoke before heat, and cheap controls that more than halve the harm', () => {
    expect(room?.risks.filter((risk) => risk.grade === 'high').length).toBeGreaterThanOrEqual(3);
    expect(room?.harmByConsequence['people-smoke']).toBeGreaterThan((room?.harmByConsequence['people-burn'] ?? 0) + (room?.harmByConsequence['spread-room'] ?? 0));
    expect(room?.bestSet.cut).toBeGreaterThan(0.5);
    expect(room?.bestSet.controls.length).toBeLessThanOrEqual(8);
  });

  it('finds the bad store extreme, with five stops or more, past IDLH with one pack and past AEGL-3 with four', () => {
    expect(store?.risks[0]?.grade).toBe('extreme');
    expect(store?.stops.length).toBeGreaterThanOrEqual(5);
    const peak = store?.smoke.one.levels.mid.HF.peakPpm ?? 0;
    // IDLH of HF is 30 ppm (NIOSH 1994, READ-P); about 77 ppm well mixed
    expect(peak).toBeGreaterThan(70);
    expect(peak).toBeLessThan(80);
    expect(store?.smoke.lot.packs).toBe(4);
    expect(store?.smoke.lot.levels.mid.HF.secondsToAegl3).not.toBeNull();
  });
});

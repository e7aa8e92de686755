import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { ScoreResult } from '@/lib/core/result';
import { scoreSecond } from '../../support/edition-2-venues';
import type { ReferenceVenue } from '../../support/reference-venues';

// What the rooms must come to is laid down in ENGINE section 6, in orders of magnitude; which stops hold and
// what leads is what the officer of the review would say of each (docs/editions.md).
const of = Object.fromEntries((['good-hall', 'ordinary-classroom', 'bad-store', 'everything'] as const).map((venue) => [venue, scoreSecond(venue)])) as Readonly<Record<ReferenceVenue, ScoreResult>>;
const stopsOf = (result: ScoreResult): readonly string[] => result.stops.map(({ id }) => id);
const graded = (result: ScoreResult, grade: string): readonly string[] => result.risks.filter((risk) => risk.grade === grade).map(({ id }) => id);

describe('the rooms, written for the second edition', () => {
  it.each(['totalHarm', 'inherentHarm', 'batteryFiresPerSeason'] as const)('rise in %s from good to bad', (figure) => {
    expect(of['good-hall'][figure]).toBeLessThan(of['ordinary-classroom'][figure] / 2);
    expect(of['ordinary-classroom'][figure]).toBeLessThan(of['bad-store'][figure] / 2);
  });

  it('leave open only what their people said they do not know', () => {
    expect(of['good-hall'].notSureControls).toEqual(['leakage-guard']);
    expect(of['ordinary-classroom'].notSureControls).toEqual(['leakage-guard', 'air-not-shared', 'collector-advice']);
    expect(of['bad-store'].notSureControls).toEqual(['leakage-guard', 'air-not-shared']);
    expect([of['good-hall'], of['ordinary-classroom']].flatMap((result) => result.assumedInputs)).toEqual([]);
    expect(of['bad-store'].assumedInputs.map(({ input }) => input)).toEqual(['needHelp', 'needAir']);
  });

  it('are a decade, three decades apart: one, ten and ten thousand points', () => {
    expect(Object.values(of).map(({ totalHarm }) => Math.round(Math.log10(totalHarm)))).toEqual([0, 1, 4, 1]);
  });
});

describe('the good hall', () => {
  const hall = of['good-hall'];

  it('has nothing high, no stop, and fewer than 0.05 battery fires a season', () => {
    expect([...graded(hall, 'high'), ...graded(hall, 'extreme')]).toEqual([]);
    expect(stopsOf(hall)).toEqual([]);
    expect(hall.batteryFiresPerSeason).toBeLessThan(0.05);
  });

  it('has little left to do, and is honest about it', () => {
    expect(hall.bestSet.cut).toBeLessThan(0.1);
    expect(hall.actions.map(({ control, state }) => `${control}: ${state}`).sort()).toEqual(['known-source: partly', 'leakage-guard: not sure', 'sprinkler: absent']);
  });

  it('has its packs under control: what leads are rotors, tired packs and cables', () => {
    expect(hall.risks.slice(0, 3).map(({ id }) => id)).toEqual(['rotor-strike', 'over-discharge', 'trip-and-cable']);
  });
});

describe('the ordinary classroom', () => {
  const room = of['ordinary-classroom'];

  it('is stopped by the two things the usual school has not done', () => {
    expect(stopsOf(room)).toEqual(['no-outdoor-spot', 'owner-unaware']);
  });

  it('has several highs and nothing extreme, led by packs on charge', () => {
    expect(graded(room, 'high')).toEqual(expect.arrayContaining(['charge-runaway', 'charge-after-crash', 'isolated-left']));
    expect(graded(room, 'extreme')).toEqual([]);
    expect(room.risks[0]?.id).toBe('charge-runaway');
  });

  it('has more to fear of smoke than of heat', () => {
    const { 'people-smoke': smoke, 'people-burn': burn, 'spread-room': spread } = room.harmByConsequence;
    expect(smoke).toBeGreaterThan(burn + spread);
  });

  it('loses more than half of its harm to a handful of cheap controls', () => {
    expect(room.bestSet.cut).toBeGreaterThan(0.5);
    expect(room.bestSet.controls.length).toBeLessThanOrEqual(8);
    expect(room.bestSet.controls).toEqual(expect.arrayContaining(['outdoor-spot', 'response-drill']));
  });
});

describe('the bad store', () => {
  const store = of['bad-store'];

  it('is stopped at once, for reasons the officer names, most of which nobody may accept', () => {
    expect(stopsOf(store)).toEqual([
      'charge-on-exit', 'store-on-exit', 'no-alarm', 'damaged-with-sound', 'left-alone', 'overnight', 'no-outdoor-spot', 'bare-on-burnable', 'no-number', 'no-officer',
      'damaged-travels', 'circuit-over', 'no-way-out', 'smoke-too-thick', 'swollen-in-use', 'nobody-helps', 'parallel-mixed', 'mixed-voltage', 'charged-elsewhere', 'owner-unaware',
    ]);
    const never = edition2.stops.filter(({ id, acceptable }) => stopsOf(store).includes(id) && acceptable?.kind === 'never');
    expect(never.length).toBeGreaterThanOrEqual(18);
  });

  it('is extreme on top, and what leads is charging, overnight first', () => {
    const leading = store.risks.slice(0, 4).map(({ id, grade }) => [id, grade]);
    expect(leading.every(([, grade]) => grade === 'extreme')).toBe(true);
    expect(leading[0]?.[0]).toBe('charge-unwatched');
    expect(leading.map(([id]) => id).sort()).toEqual(['charge-after-crash', 'charge-runaway', 'charge-unwatched', 'wrong-charge-setting']);
  });

  it('would see less than one battery fire a season even with every control absent', () => {
    expect(store.batteryFiresPerSeason).toBeGreaterThan(0.5);
    expect(store.batteryFiresPerSeason).toBeLessThan(1);
  });

  it('is past IDLH with one pack, and past AEGL-3 with the six that hang on one output', () => {
    const peak = store.smoke.one.levels.mid.HF.peakPpm;
    // IDLH of HF is 30 ppm (NIOSH 1994, READ-P); about 77 ppm well mixed, computed
    expect(peak).toBeGreaterThan(70);
    expect(peak).toBeLessThan(80);
    expect(store.smoke.lot.packs).toBe(6);
    expect(store.smoke.lot.levels.mid.HF.secondsToAegl3).not.toBeNull();
  });
});

describe('the room that uses every part of the document', () => {
  it('is stopped by what nobody knows as well as by what is missing', () => {
    expect(stopsOf(of.everything)).toEqual(['no-alarm', 'no-outdoor-spot', 'over-energy-limit', 'air-rules', 'people-asleep', 'owner-unaware']);
  });

  it('carries a record, a plan, its own states and figures, and lines of ticks beside an older list', () => {
    const risk = (id: string) => of.everything.risks.find((one) => one.id === id);
    expect(risk('charge-runaway')?.learning?.record.events).toBe(1);
    expect(of.everything.plannedHarm).toBeLessThan(of.everything.totalHarm);
    expect(risk('short-circuit')?.exposure).toBe(15_000);
    expect(of.everything.notSureControls).toEqual(expect.arrayContaining(['leads-covered', 'low-voltage-stop', 'response-drill', 'kit-sound']));
    expect(of.everything.bestSet.budget).toBe(8);
  });
});

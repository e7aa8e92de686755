import { describe, expect, it } from 'vitest';
import { controlChartScene } from '@/lib/charts/control-chart';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { sessionsToExposure } from '@/lib/sessions/to-exposure';
import { trendOf, type TrendIncident } from '@/lib/sessions/trend';
import { findingTitle, rateWords } from '@/lib/sessions/trend-words';
import { DAY_MS } from '@/lib/units/time';
import { expectWithin } from '@/tests/support/expect-within';
import { logged, SESSION_AT, sessionForTest } from '@/tests/support/session-for-tests';

const on = (day: number): Date => new Date(SESSION_AT.getTime() + day * DAY_MS);
const held = (day: number, charges: number) => sessionForTest({ id: `s${day}`, startedAt: on(day), endedAt: on(day), packs: [logged('W-01', charges)] });
const incident = (day: number, onlyNearMiss = false): TrendIncident => ({ at: on(day), onlyNearMiss });

describe('the trend', () => {
  it('counts by fortnight from the first session, and leaves a fortnight without charges without a rate', () => {
    const trend = trendOf([held(0, 100), held(13, 50), held(30, 70)], [incident(1), incident(29), incident(5, true)], on(40));
    expect(trend.periods.map(({ charges, incidents, nearMisses }) => [charges, incidents, nearMisses])).toEqual([[150, 1, 1], [0, 0, 0], [70, 1, 0]]);
    expect(trend.periods.map(({ point }) => point === null)).toEqual([false, true, false]);
    expect(trend).toMatchObject({ charges: 220, incidents: 2, nearMisses: 1 });
  });

  it('gives the exact limits of the whole rate', () => {
    const { rate } = trendOf([held(0, 1140)], [incident(1), incident(2), incident(3)], on(5));
    // Garwood limits for 3 events, 0.6187 and 8.7673 (REFERENCES E.1), over 1,140 charges.
    expectWithin(rate?.limits.low ?? 0, 0.6187 / 1140, { rel: 1e-3 });
    expectWithin(rate?.limits.high ?? 0, 8.7673 / 1140, { rel: 1e-3 });
    expect(rateWords(trendOf([held(0, 1140)], [incident(1), incident(2), incident(3)], on(5)))).toBe('2.6 (between 0.5 and 7.7)');
  });

  it('says too few before it says steady, and counts no near miss against anybody', () => {
    expect(trendOf([], [], on(0)).finding).toBe('nothing');
    expect(trendOf([held(0, 100)], [incident(1), incident(2), incident(3), incident(4)], on(5)).finding).toBe('too few');
    expect(trendOf([held(0, 100)], Array.from({ length: 9 }, (_, day) => incident(day, true)), on(13)).finding).toBe('too few');
    expect(findingTitle({ finding: 'too few' })).toBe('Too few charges to tell good from bad luck');
    const steady = Array.from({ length: 6 }, (_, index) => held(index * 14, 100));
    expect(trendOf(steady, steady.flatMap((_, index) => [incident(index * 14 + 1), incident(index * 14 + 2)]), on(83)).finding).toBe('steady');
  });

  it('points at a fortnight above what chance explains', () => {
    const sessions = Array.from({ length: 6 }, (_, index) => held(index * 14, 100));
    const incidents = [...sessions.map((_, index) => incident(index * 14 + 1)), ...Array.from({ length: 10 }, () => incident(57))];
    const trend = trendOf(sessions, incidents, on(83));
    expect(trend.finding).toBe('above');
    expect(trend.periods.map(({ point }) => point?.where)).toEqual(['within', 'within', 'within', 'within', 'above', 'within']);
  });

  it('leaves sessions that did not begin, and days after now, out', () => {
    const stopped = sessionForTest({ opening: {}, endedAt: SESSION_AT, packs: [logged('W-01', 9)] });
    expect(trendOf([stopped, held(50, 5)], [], on(40)).finding).toBe('nothing');
  });

  it('is drawn in both widths with its finding as its name', () => {
    const dots = [{ label: '1 Sep', value: 7, high: 20, isAbove: false }, { label: '15 Sep', value: null, high: null, isAbove: false }, { label: '29 Sep', value: 30, high: 21, isAbove: true }];
    for (const width of [WIDE, NARROW]) {
      const scene = controlChartScene(dots, 9, { heading: 'Incidents', finding: 'It is so.' }, width);
      expect(scene.title).toBe('It is so.');
      expect(scene.marks.filter((mark) => mark.kind === 'circle').map((mark) => mark.role)).toEqual(['ink', 'ember']);
      for (const mark of scene.marks) if (mark.kind === 'circle') expect(mark.cy).toBeGreaterThanOrEqual(30);
    }
  });
});

describe('the log as exposure', () => {
  const period = { from: on(0), to: on(30), flies: true };

  it('counts charges, flights, sessions and crashes, each only when somebody logged it', () => {
    const crash = sessionForTest({ startedAt: on(2), packs: [logged('W-01', 2, 1), logged('W-02', 1)] });
    expect(sessionsToExposure([held(0, 10), crash], period).byBase).toEqual({ sessions: 2, charges: 13, watchedCharges: 13, flights: 13, crashes: 1, crashedCharges: 1 });
    expect(sessionsToExposure([held(0, 10)], { ...period, flies: false }).byBase).toEqual({ sessions: 1, charges: 10, watchedCharges: 10 });
    expect(sessionsToExposure([], period).byBase).toEqual({});
  });

  it('keeps to the period and leaves out what did not begin', () => {
    expect(sessionsToExposure([held(-1, 10), held(31, 10), sessionForTest({ opening: {}, packs: [logged('W-01', 3)] })], period).byBase).toEqual({});
  });
});

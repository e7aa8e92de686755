import { describe, expect, it } from 'vitest';
import { cChart, type ControlChart, pChart, uChart } from '@/lib/core/statistics/control-chart';
import type { Result } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';

// CK-25: NIST/SEMATECH e-Handbook 6.3.3.1 and 6.3.3.2, through a file that quotes them (READ-S)
const WAFER_DEFECTS = [16, 14, 28, 16, 12, 20, 10, 12, 10, 17, 19, 17, 14, 16, 15, 13, 14, 16, 11, 20, 11, 19, 16, 31, 13];
const BAD_CHIPS = [12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6];

function chartOf(result: Result<ControlChart>): ControlChart {
  if (!result.ok) throw new Error(result.reason);
  return result.value;
}

describe('cChart', () => {
  it('has centre 16 and limits 4 and 28 for the wafers of the handbook', () => {
    const { centre, points } = chartOf(cChart(WAFER_DEFECTS));
    expect(centre).toBe(16);
    expect(points.every(({ low, high }) => low === 4 && high === 28)).toBe(true);
  });
  it('finds the wafer with 31 above, and not the one with 28, which lies on the limit', () => {
    const { points } = chartOf(cChart(WAFER_DEFECTS));
    expect(points.filter(({ where }) => where !== 'within').map(({ value, where }) => [value, where])).toEqual([[31, 'above']]);
  });
});

describe('pChart', () => {
  it('has centre 0.2313 and limits 0.0524 and 0.4102 for the chips of the handbook', () => {
    const { centre, points } = chartOf(pChart(BAD_CHIPS.map((count) => ({ count, size: 50 }))));
    expectWithin(centre, 0.2313333, { abs: 5e-8 });
    expectWithin(points[0]?.high ?? Number.NaN, 0.4102391, { abs: 1e-7 });
    expectWithin(points[0]?.low ?? Number.NaN, 0.0524276, { abs: 1e-7 });
    // the handbook prints 0.4103
    expectWithin(points[0]?.high ?? Number.NaN, 0.4103, { abs: 1e-4 });
  });
  it('cannot have more hits than pieces', () => {
    expect(pChart([{ count: 3, size: 2 }])).toMatchObject({ ok: false });
  });
});

describe('uChart', () => {
  it('has wider limits for shorter sessions around one centre', () => {
    const { centre, points } = chartOf(uChart([{ count: 4, size: 40 }, { count: 1, size: 10 }]));
    expect(centre).toBe(0.1);
    expectWithin(points[0]?.high ?? Number.NaN, 0.1 + 3 * Math.sqrt(0.1 / 40), { rel: 1e-15 });
    expectWithin(points[1]?.high ?? Number.NaN, 0.1 + 3 * Math.sqrt(0.1 / 10), { rel: 1e-15 });
  });
  it('never has a limit below zero', () => {
    expect(chartOf(uChart([{ count: 1, size: 10 }])).points[0]?.low).toBe(0);
  });
  it('finds a session below its limit', () => {
    const samples = [...Array.from({ length: 9 }, () => ({ count: 30, size: 10 })), { count: 2, size: 10 }];
    expect(chartOf(uChart(samples)).points.at(-1)?.where).toBe('below');
  });
  it.each([
    [[], 'at least one sample'],
    [[{ count: 1.5, size: 1 }], 'whole'],
    [[{ count: -1, size: 1 }], 'whole'],
    [[{ count: 0, size: 0 }], 'size above 0'],
    [[{ count: 0, size: Number.POSITIVE_INFINITY }], 'size above 0'],
  ])('refuses %j', (samples, reason) => {
    const result = uChart(samples);
    expect(result.ok ? '' : result.reason).toContain(reason);
  });
});

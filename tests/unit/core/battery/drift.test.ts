import { describe, expect, it } from 'vitest';
import { drift } from '@/lib/core/battery/drift';

const weekly = (values: readonly number[]): { day: number; value: number }[] => values.map((value, week) => ({ day: 7 * week, value }));

describe('drift', () => {
  it('is flagged for a cell spread that rises week by week', () => {
    expect(drift(weekly([0.01, 0.012, 0.015, 0.021, 0.026, 0.034]))).toMatchObject({ trend: 'rising' });
  });
  it('is told apart from a fall', () => expect(drift(weekly([9, 8, 7, 6, 5]))?.trend).toBe('falling'));
  it('is not flagged for a spread that wanders', () => {
    expect(drift(weekly([0.012, 0.01, 0.013, 0.011, 0.012, 0.01, 0.013]))?.trend).toBe('not shown');
  });
  it('is not flagged with four checks, however steep', () => {
    expect(drift(weekly([0.01, 0.05, 0.2, 0.4]))).toMatchObject({ interval: null, trend: 'not shown' });
  });
  it('is not flagged for figures that never change', () => {
    expect(drift(weekly([0.01, 0.01, 0.01, 0.01, 0.01, 0.01]))).toEqual({ slope: 0, interval: { low: 0, high: 0 }, trend: 'not shown' });
  });
  it('is per day, whatever the order of the checks', () => {
    const checks = weekly([1, 8, 15, 22, 29]);
    expect(drift([...checks].reverse())).toEqual({ slope: 1, interval: { low: 1, high: 1 }, trend: 'rising' });
  });
  it('has no slope from checks of one day', () => expect(drift([{ day: 3, value: 1 }, { day: 3, value: 2 }])).toBeNull());
});

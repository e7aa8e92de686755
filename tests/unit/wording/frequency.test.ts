import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frequencyWords, inHundredTeams, onceInWords, onceRangeWords, rangeWords } from '@/lib/wording/frequency';

describe('onceInWords', () => {
  it.each([
    [0, 'does not arise here'],
    [1 / 172, 'about once in 170 seasons'],
    [0.00005, 'about once in 20,000 seasons'],
    [3e-8, 'seldomer than once in a million seasons'],
    [0.7, 'about once in 1.4 seasons'],
    [0.98, 'about once a season'],
    [1, 'about once a season'],
    [2.04, 'about twice a season'],
    [13.4, 'about 13 times a season'],
  ])('says %d events a season as "%s"', (frequency, words) => {
    expect(onceInWords(frequency)).toBe(words);
  });

  it('never says more than two figures', () => {
    fc.assert(fc.property(fc.double({ min: 1e-9, max: 1e4, noNaN: true }), (frequency) => {
      const figures = onceInWords(frequency).replace(/[^0-9]/g, '').replace(/^0+|0+$/g, '');
      expect(figures.length).toBeLessThanOrEqual(2);
    }));
  });

  it('refuses a frequency that is not a number', () => {
    expect(() => onceInWords(Number.NaN)).toThrow('finite');
  });
});

describe('inHundredTeams', () => {
  it.each([
    [1 / 170, 'in 100 teams like yours, about 1 every 2 seasons'],
    [1 / 44, 'in 100 teams like yours, about 2.3 a season'],
    [1 / 99, 'in 100 teams like yours, about 1 a season'],
    [1 / 120, 'in 100 teams like yours, about 1 a season'],
    [0.0001, 'in 100 teams like yours, about 1 every 100 seasons'],
    [0, 'does not arise here'],
  ])('says %d events a season as "%s"', (frequency, words) => {
    expect(inHundredTeams(frequency)).toBe(words);
  });
});

describe('ranges', () => {
  it('name both ends, or one when they round to the same', () => {
    expect(rangeWords(20.4, 1511)).toBe('between 20 and 1,500');
    expect(rangeWords(2, 2.01)).toBe('close to 2');
  });

  it('turn frequencies round, because the rarer is the larger number of seasons', () => {
    expect(onceRangeWords({ p05: 1 / 1500, p95: 1 / 20 })).toBe('between 20 and 1,500');
  });

  it('say each end in its own way when the range reaches over one a season', () => {
    expect(onceRangeWords({ p05: 1 / 78, p95: 1.31 })).toBe('between 1.3 times a season and once in 78');
    expect(onceRangeWords({ p05: 1.2, p95: 4 })).toBe('between 1.2 and 4 times a season');
  });

  it('have an upper end only when the lower one is never', () => {
    expect(onceRangeWords({ p05: 0, p95: 1 / 50 })).toBe('at most once in 50 seasons');
    expect(onceRangeWords({ p05: 0, p95: 3 })).toBe('at most 3 times a season');
    expect(onceRangeWords({ p05: 1e-9, p95: 0.01 })).toBe('between 100 and over a million');
  });

  it('stand behind the middle in one line', () => {
    expect(frequencyWords(1 / 170, { p05: 1 / 1500, p95: 1 / 20 })).toBe('about once in 170 seasons (between 20 and 1,500)');
  });
});

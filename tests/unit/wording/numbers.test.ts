import { describe, expect, it } from 'vitest';
import { durationWords, hours, metres, metresRange, minutesOrHours, minutesSeconds, ppm } from '@/lib/wording/measures';
import { exact, percent, percentRange, rounded, roundedValue, scientific, whole } from '@/lib/wording/numbers';

describe('numbers', () => {
  it('show two figures and keep the thousands apart', () => {
    expect([rounded(1234), rounded(0.02345), rounded(99.6), rounded(0)]).toEqual(['1,200', '0.023', '100', '0']);
    expect(roundedValue(0.0678)).toBe(0.068);
  });

  it('stay as they were given when somebody gave them', () => {
    expect([exact(2880), exact(12.58), whole(2879.6)]).toEqual(['2,880', '12.58', '2,880']);
  });

  it('have a digit and an exponent in scientific form', () => {
    expect(scientific(0.0712)).toEqual({ digits: '7.1', exponent: -2 });
    expect(scientific(0)).toEqual({ digits: '0.0', exponent: 0 });
  });
});

describe('per cent', () => {
  it('never claims none or all where it is not none or all', () => {
    expect([percent(0), percent(0.001), percent(0.584), percent(0.997), percent(1)]).toEqual(['0 %', 'less than 1 %', '58 %', 'over 99 %', '100 %']);
  });

  it('names a range once', () => {
    expect(percentRange(0.44, 0.692)).toBe('44 to 69 %');
  });
});

describe('measures', () => {
  it('say lengths below a metre in centimetres', () => {
    expect([metres(0.247), metres(1), metres(12.34)]).toEqual(['25 cm', '1 m', '12 m']);
    expect([metresRange(0.26, 0.6), metresRange(0.4, 1.2)]).toEqual(['26 to 60 cm', '0.4 to 1.2 m']);
  });

  it('carry a full minute over', () => {
    expect([durationWords(45), durationWords(119.6), durationWords(125), minutesSeconds(65), minutesSeconds(59.7)]).toEqual(['45 s', '2 min', '2 min 5 s', '1:05', '1:00']);
  });

  it('turn long times into hours', () => {
    expect([minutesOrHours(40), minutesOrHours(314.8), hours(0.5), ppm(33.78)]).toEqual(['40 min', '5.2 h', '0.5 h', '34 ppm']);
  });
});

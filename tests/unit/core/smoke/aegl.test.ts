import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aeglAt, aeglCurve } from '@/lib/core/smoke/aegl-curve';
import { aeglLevel } from '@/lib/core/smoke/aegl-level';
import { scaledToDuration } from '@/lib/core/smoke/ten-berge';
import type { Minutes, PartsPerMillion } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';

const minutes = (value: number): Minutes => of<Minutes>(value);
const ppm = (value: number): PartsPerMillion => of<PartsPerMillion>(value);

describe('scaledToDuration', () => {
  // CK-16 and REFERENCES B.3, NIOSH IDLH documentation (READ-P). NIOSH rounds its factors to two digits,
  // so exact powers differ by up to half a per cent
  it.each([
    ['HF, rat', 1276, 60, 30, 2, 1799], ['HF, monkey', 1774, 60, 30, 2, 2501], ['HF, rabbit', 313, 420, 30, 2, 1171],
    ['HF, guinea pig', 4327, 15, 30, 2, 3072], ['CO, rat, 15 min', 8636, 15, 30, 3, 6822], ['CO, rat, 4 h', 1784, 240, 30, 3, 3568],
  ])('scales %s: %f ppm', (_, from, fromMinutes, toMinutes, n, expected) => {
    expectWithin(scaledToDuration(ppm(from), minutes(fromMinutes), minutes(toMinutes), 1 / n), expected, { rel: 0.005 });
  });
  it('changes nothing where harm does not depend on time', () => {
    expect(scaledToDuration(ppm(12), minutes(240), minutes(480), 0)).toBe(12);
  });
});

describe('aeglAt', () => {
  // REFERENCES B.1 and B.2 (READ-S), five durations of the tables
  const rows = [
    ['HF 2', model.aegl.HF['2'], [95, 34, 24, 12, 12]], ['HF 3', model.aegl.HF['3'], [170, 62, 44, 22, 22]],
    ['CO 2', model.aegl.CO['2'], [420, 150, 83, 33, 27]], ['CO 3', model.aegl.CO['3'], [1700, 600, 330, 150, 130]],
    ['HF 1', model.aegl.HF['1'], [1, 1, 1, 1, 1]],
  ] as const;

  it.each(rows)('%s goes through the points of its table', (_, curve, values) => {
    [10, 30, 60, 240, 480].forEach((duration, index) => expectWithin(aeglAt(curve, minutes(duration)), values[index] ?? Number.NaN, { rel: 1e-14 }));
  });
  it.each(rows)('%s holds its first value before 10 min and its last after 8 h', (_, curve, values) => {
    expect([0, 0.5, 9.99].map((t) => aeglAt(curve, minutes(t)))).toEqual([values[0], values[0], values[0]]);
    expect(aeglAt(curve, minutes(2000))).toBe(values[4]);
  });
  it('is half way on both logarithms between two points', () => {
    expectWithin(aeglAt(model.aegl.HF['3'], minutes(Math.sqrt(10 * 30))), Math.sqrt(170 * 62), { rel: 1e-13 });
  });
  it('never rises with time and stays between neighbouring points', () => {
    fc.assert(fc.property(fc.constantFrom(...rows), fc.double({ min: 0, max: 600, noNaN: true }), fc.double({ min: 0, max: 60, noNaN: true }), ([, curve], t, more) => {
      const [here, later] = [aeglAt(curve, minutes(t)), aeglAt(curve, minutes(t + more))];
      expect(later).toBeLessThanOrEqual(here * (1 + 1e-14));
      expect(later).toBeGreaterThan(0);
    }));
  });
  // C²·t = constant, REFERENCES B.1: 44 · √2 = 62.2, printed 62
  it('scales HF between 30 and 60 min about as C²·t', () => {
    expectWithin(scaledToDuration(ppm(44), minutes(60), minutes(30), 1 / 2), 62, { abs: 0.3 });
  });
});

describe('aeglLevel', () => {
  // CK-51 (READ-S); "at or above" is our choice
  it.each([[0.9, 0], [1, 1], [94, 1], [95, 2], [171, 3]])('HF %f ppm for 10 min reaches level %i', (concentration, level) => {
    expect(aeglLevel(model, 'HF', ppm(concentration), minutes(10))).toBe(level);
  });
  // CK-52 (READ-S); CO has no level 1
  it.each([[83, 60, 2], [600, 30, 3], [419, 10, 0]])('CO %f ppm for %f min reaches level %i', (concentration, time, level) => {
    expect(aeglLevel(model, 'CO', ppm(concentration), minutes(time))).toBe(level);
  });
});

describe('aeglCurve', () => {
  it.each([[[10, 30], [95]], [[], []], [[30, 10], [95, 34]], [[10, 30], [34, 95]], [[10, 30], [95, 0]]])('refuses a table of %j against %j', (durations, values) => {
    expect(() => aeglCurve(durations, values)).toThrow();
  });
});

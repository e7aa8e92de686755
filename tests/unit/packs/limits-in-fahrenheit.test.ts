import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figureToKeep, shownFigure, unitWords } from '@/lib/packs/limit-figure';
import { adjustableLimits, type SchoolRules } from '@/lib/packs/school-rules';
import { fieldOfLimit, readRulesPost } from '@/lib/packs/school-rules-input';
import { fahrenheit, fahrenheitDifference, inFahrenheit, inFahrenheitDifference } from '@/lib/units/us-customary';
import { expectWithin } from '@/tests/support/expect-within';
import { secondLimits } from '@/tests/support/second-pack-limits';

const LIMITS = adjustableLimits(secondLimits);
const rules = (packLimits: SchoolRules['packLimits']): SchoolRules => ({ packLimits });
const post = (given: Readonly<Record<string, string>>, standing = rules({})) => readRulesPost({ revision: 1, temperature: '°F', checkDays: '', ...given }, LIMITS, standing);
const typed = (id: string, words: string) => ({ [fieldOfLimit(id)]: words });

/** The form as the page fills it for a school that measures in °F. */
const asShown = ({ packLimits }: SchoolRules) => Object.assign({}, ...LIMITS.map(({ id, unit }) => typed(id, packLimits[id] === undefined ? '' : String(shownFigure(unit, packLimits[id], '°F'))))) as Readonly<Record<string, string>>;

describe('degrees Fahrenheit', () => {
  it('are exact by definition', () => {
    // t/°C = (t/°F − 32) / 1.8; NIST Special Publication 811 (2008), appendix B.8 and B.9, remembered. −40 is the same on both scales.
    expectWithin(fahrenheit(212), 100, { abs: 1e-12 });
    expectWithin(fahrenheit(-40), -40, { abs: 1e-12 });
    expectWithin(inFahrenheit(fahrenheit(98.6)), 98.6, { abs: 1e-12 });
    expectWithin(fahrenheitDifference(18), 10, { abs: 1e-12 });
    expectWithin(inFahrenheitDifference(fahrenheitDifference(5.4)), 5.4, { abs: 1e-12 });
  });
});

describe('limits of a school with US units', () => {
  it('are shown in °F, a difference without the 32, and everything else as it is', () => {
    const shown = (id: string) => LIMITS.filter((limit) => limit.id === id).map(({ unit, standing, range }) => [shownFigure(unit, standing, '°F'), shownFigure(unit, range.min, '°F'), shownFigure(unit, range.max, '°F'), unitWords(unit, '°F')])[0];
    expect(shown('too-hot')).toEqual([140, 113, 140, '°F']);
    expect(shown('hot-at-rest')).toEqual([18, 5.4, 18, '°F']);
    expect(shown('cell-low')).toEqual([3.3, 3.3, 3.6, 'V']);
    expect(unitWords('K', '°C')).toBe('°C');
  });

  it('are kept in °C when they are typed in °F', () => {
    expect(post({ ...typed('too-hot', '122'), ...typed('hot-at-rest', '9'), ...typed('cell-low', '3.5') })).toEqual({ ok: true, rules: { packLimits: { 'hot-at-rest': 5, 'too-hot': 50, 'cell-low': 3.5 } } });
  });

  it('may be set to each end of their range as it is shown, and to the content’s own figure, which sets nothing', () => {
    for (const { id, unit, range, standing } of LIMITS) {
      for (const end of [range.min, range.max]) expect(post(typed(id, String(shownFigure(unit, end, '°F')))), id).toEqual({ ok: true, rules: { packLimits: end === standing ? {} : { [id]: end } } });
    }
  });

  it('are refused outside of their range in the unit that was typed', () => {
    expect(post({ ...typed('too-hot', '60'), ...typed('hot-at-rest', '19') })).toEqual({ ok: false, faults: [
      { field: fieldOfLimit('hot-at-rest'), message: 'Write a figure from 5.4 to 18, or leave it empty' },
      { field: fieldOfLimit('too-hot'), message: 'Write a figure from 113 to 140, or leave it empty' },
    ] });
  });

  it('are the same to the last digit when the form is saved unchanged, also what was typed in °C with many digits', () => {
    fc.assert(fc.property(fc.double({ min: 45, max: 59.99, noNaN: true }), fc.double({ min: 3, max: 9.99, noNaN: true }), (hot, warmer) => {
      const standing = rules({ 'too-hot': hot, 'hot-at-rest': warmer });
      expect(post(asShown(standing), standing)).toEqual({ ok: true, rules: { packLimits: { 'hot-at-rest': warmer, 'too-hot': hot } } });
    }));
  });

  it('are shown again as they were typed', () => {
    fc.assert(fc.property(fc.integer({ min: -4000, max: 14_000 }), fc.constantFrom('K', '°C'), (hundredths, unit) => {
      expect(String(shownFigure(unit, figureToKeep(unit, hundredths / 100, '°F', []), '°F'))).toBe(String(hundredths / 100));
    }));
  });
});

import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { limitsOfSchool, type SchoolLimits } from '@/lib/core/battery/school-limits';
import { secondLimits } from '@/tests/support/second-pack-limits';

const limits = edition1.packLimits;
const reasonFor = (chosen: SchoolLimits): string => {
  const result = limitsOfSchool(limits, chosen);
  return result.ok ? '' : result.reason;
};

describe('limitsOfSchool', () => {
  it('lets a school be stricter, and the verdict follows', () => {
    const result = limitsOfSchool(limits, { spread: 0.05, storageCharge: 3.75, landing: 3.6 });
    if (!result.ok) throw new Error(result.reason);
    expect(packVerdict(limits, { cellSpread: 0.06 }).verdict).toBe('fit');
    expect(packVerdict(result.value, { cellSpread: 0.06 })).toMatchObject({ verdict: 'watch', fired: [{ id: 'spread', limit: 0.05 }] });
    expect([result.value.storageCharge.target, result.value.landing.value]).toEqual([3.75, 3.6]);
  });
  it('lets both ends of a range and leaves the content as it was', () => {
    expect([reasonFor({ spread: 0.03 }), reasonFor({ spread: 0.1 })]).toEqual(['', '']);
    expect(limits.rules.find(({ id }) => id === 'spread')?.value).toBe(0.1);
  });
  it('never lets a school be looser than the trade', () => {
    expect(reasonFor({ spread: 0.11 })).toContain('between 0.03 and 0.1');
    expect(reasonFor({ 'cell-too-low': 2.9 })).toContain('between 3 and 3.3');
    expect(reasonFor({ landing: 3.3 })).toContain('landing');
    expect(reasonFor({ spread: Number.NaN })).toContain('spread');
  });
  it('knows no other limits, and not those that are fixed', () => {
    expect(reasonFor({ swollen: 0 })).toBe('swollen is fixed');
    expect(reasonFor({ colour: 1 })).toContain('no limit called colour');
    expect(reasonFor({ toString: 1 })).toContain('no limit called toString');
  });
  it.each([['first', limits], ['second', secondLimits]])('is loosest as the content of the %s edition stands: every range ends at its own figure', (_, { rules }) => {
    for (const { id, op, value, schoolMay } of rules) {
      if (schoolMay === undefined) continue;
      expect(value, id).toBe(op === '<' ? schoolMay.min : schoolMay.max);
    }
  });
  it.each([limits, secondLimits])('changes nothing without a choice', (content) => expect(limitsOfSchool(content, {})).toEqual({ ok: true, value: content }));
});

describe('what the second edition lets a school set', () => {
  const reasonOf = (chosen: SchoolLimits): string => {
    const result = limitsOfSchool(secondLimits, chosen);
    return result.ok ? '' : result.reason;
  };
  // bounds: our judgement
  it('is 50 to 300 mV for the large spread and 20 to 100 mV for the small', () => {
    expect([reasonOf({ 'spread-large': 0.05 }), reasonOf({ 'spread-large': 0.1 }), reasonOf({ spread: 0.02 })]).toEqual(['', '', '']);
    expect(reasonOf({ 'spread-large': 0.049 })).toBe('spread-large must lie between 0.05 and 0.3, got 0.049');
    expect(reasonOf({ 'spread-large': 0.301 })).toContain('spread-large');
    expect(reasonOf({ spread: 0.019 })).toBe('spread must lie between 0.02 and 0.1, got 0.019');
  });
  it('is 1 to 24 hours after a hit', () => {
    expect([reasonOf({ 'just-hit': 1 }), reasonOf({ 'just-hit': 24 })]).toEqual(['', '']);
    expect(reasonOf({ 'just-hit': 0.99 })).toContain('between 1 and 24');
    expect(reasonOf({ 'just-hit': 24.1 })).toContain('between 1 and 24');
  });
  it('isolates at 100 mV when the school says so', () => {
    const own = limitsOfSchool(secondLimits, { 'spread-large': 0.1 });
    if (!own.ok) throw new Error(own.reason);
    expect(packVerdict(own.value, { cellSpread: 0.1 }).verdict).toBe('isolate');
    expect(packVerdict(own.value, { cellSpread: 0.099 }).fired).toEqual([]);
  });
  it('is no sign that is seen, heard or smelt', () => expect(reasonOf({ smell: 1 })).toBe('smell is fixed'));
});

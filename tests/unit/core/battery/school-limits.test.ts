import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { limitsOfSchool, type SchoolLimits } from '@/lib/core/battery/school-limits';

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
  it('is loosest as the content stands: every range ends at the content’s own figure', () => {
    for (const { id, op, value, schoolMay } of limits.rules) {
      if (schoolMay === undefined) continue;
      expect(value, id).toBe(op === '<' ? schoolMay.min : schoolMay.max);
    }
  });
  it('changes nothing without a choice', () => expect(limitsOfSchool(limits, {})).toEqual({ ok: true, value: limits }));
});

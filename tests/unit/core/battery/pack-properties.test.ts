import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PackRule } from '@/lib/content/model';
import type { MeasureValue, PackMeasures } from '@/lib/core/battery/pack-measures';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { limitsOfSchool } from '@/lib/core/battery/school-limits';
import { secondCheck, secondLimits as limits, soundPack } from '@/tests/support/second-pack-limits';

const rank = (verdict: string | null): number => limits.order.findIndex((one) => one === verdict);
/** A value that certainly fires the rule, from its limit to far past it. */
function bad(rule: PackRule): fc.Arbitrary<MeasureValue> {
  const { op, value } = rule;
  if (typeof value !== 'number') return fc.constantFrom(...(rule.doubtCounts === true ? [value, 'not sure'] : [value]));
  const beyond = op === '<' ? fc.double({ min: -20, max: value - 0.001, noNaN: true }) : fc.double({ min: op === '>' ? value + 0.001 : value, max: value + 500, noNaN: true });
  return beyond;
}
/** One more sign: the rule's measure made bad, its exception not known to hold. The kind of cell is what a pack is, no sign. */
const signRules = limits.rules.filter((rule) => rule.measure !== 'cellType');
const sign = fc.constantFrom(...signRules).chain((rule) => bad(rule).map((value) => ({ rule, found: { [rule.measure]: value, ...(rule.unless === undefined ? {} : { [rule.unless.measure]: undefined }) } satisfies PackMeasures })));
const cellType = fc.constantFrom(...secondCheck.cellTypes.map(({ id }) => id), 'not sure', undefined);
/** A check with any number of signs and gaps. */
const anyCheck = fc.tuple(fc.array(sign, { maxLength: 4 }), fc.subarray(Object.keys(soundPack)), cellType).map(([signs, gaps, kind]): PackMeasures => ({
  ...soundPack, ...Object.fromEntries(gaps.map((name) => [name, undefined])), ...Object.assign({}, ...signs.map(({ found }) => found)) as PackMeasures, cellType: kind,
}));
/** A sign may not hide one that is there: a measure that already fires for something worse stays. */
const isWorse = (before: PackMeasures, after: PackMeasures, rule: PackRule): boolean => {
  const firedBefore = packVerdict(limits, before).fired.filter(({ measure }) => measure === rule.measure).map(({ id }) => id);
  const firedAfter = packVerdict(limits, after).fired.map(({ id }) => id);
  return firedBefore.every((id) => firedAfter.includes(id));
};

describe('one more bad sign', () => {
  it('never makes a verdict milder, nor lets go of what was stopped', () => {
    fc.assert(fc.property(anyCheck, sign, (found, { rule, found: more }) => {
      const worse = { ...found, ...more };
      fc.pre(isWorse(found, worse, rule));
      const [before, after] = [packVerdict(limits, found), packVerdict(limits, worse)];
      expect(rank(after.verdict)).toBeGreaterThanOrEqual(rank(before.verdict));
      expect(after.blocks).toEqual(expect.arrayContaining([...(before.blocks ?? [])]));
    }), { numRuns: 1000 });
  });
  it('is always heard: leave is leave, whatever was measured besides', () => {
    const leave = sign.filter(({ rule }) => rule.verdict === 'leave' && rule.measure !== 'cellMax');
    fc.assert(fc.property(anyCheck, leave, (found, { found: more }) => {
      expect(packVerdict(limits, { ...found, ...more })).toMatchObject({ verdict: 'leave', blocks: ['charge', 'fly', 'travel'] });
    }));
  });
});

describe('less known', () => {
  it('is never fit, and never charged', () => {
    fc.assert(fc.property(anyCheck, fc.constantFrom(...secondCheck.incomplete.needs), (found, anyOf) => {
      const { verdict, blocks } = packVerdict(limits, { ...found, ...Object.fromEntries(anyOf.map((name) => [name, undefined])) });
      expect(verdict).not.toBe('fit');
      expect(blocks).toContain('charge');
    }));
  });
});

describe('a stricter school', () => {
  it('never makes a verdict milder', () => {
    const own = limits.rules.filter(({ schoolMay }) => schoolMay !== undefined);
    const chosen = fc.record(Object.fromEntries(own.map(({ id, schoolMay }) => [id, fc.double({ min: schoolMay?.min, max: schoolMay?.max, noNaN: true })])), { requiredKeys: [] });
    fc.assert(fc.property(anyCheck, chosen, (found, figures) => {
      const school = limitsOfSchool(limits, figures as Record<string, number>);
      if (!school.ok) throw new Error(school.reason);
      const [common, stricter] = [packVerdict(limits, found), packVerdict(school.value, found)];
      expect(rank(stricter.verdict)).toBeGreaterThanOrEqual(rank(common.verdict));
      expect(stricter.blocks).toEqual(expect.arrayContaining([...(common.blocks ?? [])]));
    }));
  });
});

import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { checkCourse } from '@/lib/core/battery/check-course';
import { firedRules } from '@/lib/core/battery/fired-rules';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { secondLimits as limits, soundPack } from '@/tests/support/second-pack-limits';

const courseOf = (found: PackMeasures) => checkCourse(limits, firedRules(limits, found).fired);
const stepsOf = (found: PackMeasures): string[] => courseOf(found).steps.map(({ step }) => step.id);

describe('checkCourse', () => {
  it('looks, listens, smells and feels before it measures', () => {
    expect(stepsOf(soundPack)).toEqual(['look', 'listen', 'smell', 'warmth', 'record', 'voltage', 'wear']);
    expect(stepsOf({})).toEqual(stepsOf(soundPack));
  });
  it.each([
    [{ venting: true }, 'look', ['look']],
    [{ hissing: true }, 'listen', ['look', 'listen']],
    [{ smell: 'not sure' }, 'smell', ['look', 'listen', 'smell']],
    [{ temperatureRise: 10 }, 'warmth', ['look', 'listen', 'smell', 'warmth']],
  ])('with %j ends at %s', (found, endsAt, steps) => {
    expect(courseOf(found).endsAt?.step).toBe(endsAt);
    expect(stepsOf(found)).toEqual(steps);
  });
  it('asks nothing more within the step in which the sign showed', () => {
    expect(courseOf({ growing: true }).steps.at(-1)?.measures).toEqual(['venting', 'growing']);
  });
  it('ends at the first of several signs', () => {
    expect(courseOf({ smell: true, hissing: true, warming: true }).endsAt).toEqual({ step: 'listen', measure: 'hissing' });
  });
  it('goes on past signs that are less', () => {
    expect(stepsOf({ tornWrap: true, damagedLead: true })).toContain('voltage');
  });
  it.each(['swollen', 'dented', 'bareFoil', 'cellMoved'])('asks nobody to put a meter on a pack with %s, but does listen and smell', (sign) => {
    expect(stepsOf({ [sign]: true })).toEqual(['look', 'listen', 'smell', 'warmth', 'record']);
  });
  it('does not ask for wear once a voltage isolates', () => {
    expect(stepsOf({ ...soundPack, cellMin: 2.5 })).toEqual(['look', 'listen', 'smell', 'warmth', 'record', 'voltage']);
  });
  it('calls nothing missing that is no longer asked', () => {
    expect(packVerdict(limits, { venting: false, growing: true }).missing).toEqual([]);
    expect(packVerdict(limits, { ...soundPack, dented: true, cellMin: undefined, cellMax: undefined }).missing).toEqual([]);
  });
  it('has no steps in the first edition', () => {
    expect(checkCourse(edition1.packLimits, firedRules(edition1.packLimits, { smell: true }).fired)).toEqual({ steps: [], endsAt: null });
  });
});

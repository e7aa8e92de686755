import { describe, expect, it } from 'vitest';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { secondCheck, secondLimits as limits, soundPack } from '@/tests/support/second-pack-limits';

const check = (change: PackMeasures) => packVerdict(limits, { ...soundPack, ...change });
const missingIn = (change: PackMeasures): string[] => check(change).missing.map(({ measure }) => measure);

describe('packVerdict of the second edition', () => {
  it('leaves a pack alone whatever else is wrong with it', () => {
    const { verdict, fired } = check({ smell: true, dented: true, damagedLead: true, ageMonths: 40 });
    expect(verdict).toBe('leave');
    expect(fired.map((rule) => rule.verdict)).toEqual(['leave', 'isolate', 'retire', 'watch']);
  });
  it('isolates before it retires, and retires before it watches', () => {
    expect(check({ dented: true, damagedLead: true }).verdict).toBe('isolate');
    expect(check({ damagedLead: true, ageMonths: 40 }).verdict).toBe('retire');
  });
  it('unites what the rules stop, in one order', () => {
    expect(check({ hoursFull: 80, ambientTemperature: 2 }).blocks).toEqual(['charge', 'travel']);
    expect(check({ cellSpread: 0.15, hoursFull: 80 }).blocks).toEqual(['fly', 'travel']);
    expect(check({ ageMonths: 40 })).toMatchObject({ verdict: 'watch', blocks: [] });
  });
  it('has words for every verdict, each to be confirmed', () => {
    expect(secondCheck.verdicts.map(({ verdict }) => verdict)).toEqual(limits.order);
    for (const { confirm } of secondCheck.verdicts) expect(confirm).toBe('to be confirmed by the local fire service and first-aid trainer');
  });
});

describe('what nobody knows', () => {
  it.each(secondCheck.incomplete.needs.map((anyOf) => [anyOf]))('is not good: without %j a pack is not fit', (anyOf) => {
    const without = Object.fromEntries(anyOf.map((name) => [name, undefined]));
    expect(check(without)).toMatchObject({ verdict: 'watch', fired: [], blocks: ['charge', 'fly', 'travel'], incomplete: secondCheck.incomplete.text });
    expect(missingIn(without)).toEqual(anyOf);
  });
  it('may be wear: a pack is fit without it, and the check says so', () => {
    expect(check({ resistanceRatio: { missing: 'resistance not compared: cold' }, capacityShare: undefined })).toMatchObject({
      verdict: 'fit', incomplete: null,
      missing: [{ measure: 'resistanceRatio', why: 'resistance not compared: cold' }, { measure: 'capacityShare', why: null }],
    });
  });
  it('may be the thermometer, when a hand was held near, and the other way round', () => {
    expect(check({ temperatureRise: undefined })).toMatchObject({ verdict: 'fit', incomplete: null });
    expect(check({ feltWarm: undefined })).toMatchObject({ verdict: 'fit', incomplete: null });
  });
  it('has no verdict when it is everything, and stops everything', () => {
    expect(packVerdict(limits, {})).toMatchObject({ verdict: null, fired: [], blocks: ['charge', 'fly', 'travel'] });
  });
  it.each(limits.rules.filter(({ doubtCounts }) => doubtCounts).map(({ id, measure, verdict }) => [id, measure, verdict]))(
    'counts as the sign of %s', (id, measure, verdict) => {
      const result = check({ [measure]: 'not sure' });
      expect(result.verdict).toBe(verdict);
      expect(result.fired.find((rule) => rule.id === id)).toMatchObject({ measured: 'not sure' });
      expect(result.missing.map((one) => one.measure)).not.toContain(measure);
    },
  );
  it.each(['tornWrap', 'damagedLead', 'marked', 'cellType', 'cellMin'])('is missing where it is no sign of danger: %s', (measure) => {
    expect(check({ [measure]: 'not sure' })).toMatchObject({ verdict: 'watch', missing: [{ measure, why: 'not sure' }] });
  });
  it('never clears a second-hand pack', () => {
    expect(check({ secondHand: true, firstChargeWentWell: 'not sure' }).blocks).toEqual(['charge']);
    expect(missingIn({ secondHand: true, firstChargeWentWell: undefined })).toEqual(['firstChargeWentWell']);
    expect(missingIn({ firstChargeWentWell: undefined })).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { secondLimits as limits, soundPack } from '@/tests/support/second-pack-limits';

const ALL = ['charge', 'fly', 'travel'];
const check = (change: PackMeasures) => packVerdict(limits, { ...soundPack, ...change });
const firedIds = (change: PackMeasures): string[] => check(change).fired.map(({ id }) => id);

/**
 * Rule, verdict, what it stops, measures at the limit, measures just short of it. The figures are common
 * practice (REFERENCES F.1, MEM and READ-P) or our judgement, as the content says beside each.
 */
const RULES: readonly [string, string, readonly string[], PackMeasures, PackMeasures][] = [
  ['venting', 'leave', ALL, { venting: true }, { venting: false }],
  ['venting-heard', 'leave', ALL, { hissing: true }, { hissing: false }],
  ['growing', 'leave', ALL, { growing: true }, { growing: false }],
  ['smell', 'leave', ALL, { smell: true }, { smell: false }],
  ['wet', 'leave', ALL, { wet: true }, { wet: false }],
  ['hot-at-rest', 'leave', ALL, { temperatureRise: 10 }, { temperatureRise: 9.9 }],
  ['felt-warm', 'leave', ALL, { feltWarm: true }, { feltWarm: false }],
  ['self-heating', 'leave', ALL, { warming: true }, { warming: false }],
  ['too-hot', 'leave', ALL, { packTemperature: 60 }, { packTemperature: 59.9 }],
  ['cell-too-high-on-charge', 'leave', ALL, { cellMax: 4.26, hoursSinceCharge: 1 }, { cellMax: 4.26, hoursSinceCharge: 1.01 }],
  ['swollen', 'isolate', ALL, { swollen: true }, { swollen: false }],
  ['bare-foil', 'isolate', ALL, { bareFoil: true }, { bareFoil: false }],
  ['dented', 'isolate', ALL, { dented: true }, { dented: false }],
  ['cell-moved', 'isolate', ALL, { cellMoved: true }, { cellMoved: false }],
  ['discoloured', 'isolate', ALL, { discoloured: true }, { discoloured: false }],
  ['cell-silent', 'isolate', ALL, { silentCells: 1 }, { silentCells: 0 }],
  ['cell-too-low', 'isolate', ALL, { cellMin: 2.999 }, { cellMin: 3 }],
  ['cell-too-high', 'isolate', ALL, { cellMax: 4.251 }, { cellMax: 4.25 }],
  ['spread-large', 'isolate', ALL, { cellSpread: 0.3 }, { cellSpread: 0.299 }],
  ['bad-lead', 'retire', ALL, { damagedLead: true }, { damagedLead: false }],
  ['unmarked', 'retire', ALL, { marked: false }, { marked: true }],
  ['resistance-double', 'retire', ALL, { resistanceRatio: 2 }, { resistanceRatio: 1.99 }],
  ['capacity-gone', 'retire', ALL, { capacityShare: 0.699 }, { capacityShare: 0.7 }],
  ['full-voltage-not-marked', 'watch', ['charge'], { cellType: 'not-marked' }, { cellType: 'full-4-20' }],
  ['full-voltage-other', 'watch', ALL, { cellType: 'full-other' }, { cellType: 'full-4-35' }],
  ['chemistry-other', 'watch', ALL, { cellType: 'other-chemistry' }, { cellType: 'full-4-20' }],
  ['second-hand', 'watch', ['charge'], { secondHand: true }, { secondHand: true, firstChargeWentWell: true }],
  ['just-hit', 'watch', ALL, { hoursSinceImpact: 0.99 }, { hoursSinceImpact: 1 }],
  ['hit-today', 'watch', ['charge'], { hoursSinceImpact: 11.9 }, { hoursSinceImpact: 12 }],
  ['warm-at-rest', 'watch', ALL, { temperatureRise: 5 }, { temperatureRise: 4.9 }],
  ['torn-wrap', 'watch', ALL, { tornWrap: true }, { tornWrap: false }],
  ['cell-low', 'watch', ['charge', 'fly'], { cellMin: 3.299 }, { cellMin: 3.3 }],
  ['spread', 'watch', ['fly'], { cellSpread: 0.1 }, { cellSpread: 0.099 }],
  ['not-cooled', 'watch', ['charge'], { hoursSinceUse: 0.32 }, { hoursSinceUse: 0.33 }],
  ['pack-cold', 'watch', ['charge'], { packTemperature: 4.9 }, { packTemperature: 5 }],
  ['ambient-cold', 'watch', ['charge'], { ambientTemperature: 4.9 }, { ambientTemperature: 5 }],
  ['ambient-hot', 'watch', ['charge'], { ambientTemperature: 40.1 }, { ambientTemperature: 40 }],
  ['long-full', 'watch', ['travel'], { hoursFull: 72.1 }, { hoursFull: 72 }],
  ['resistance-up', 'watch', [], { resistanceRatio: 1.5 }, { resistanceRatio: 1.49 }],
  ['capacity-low', 'watch', [], { capacityShare: 0.799 }, { capacityShare: 0.8 }],
  ['old', 'watch', [], { ageMonths: 36 }, { ageMonths: 35 }],
  ['many-cycles', 'watch', [], { cycles: 300 }, { cycles: 299 }],
];

describe('each rule of the second edition', () => {
  it('stands in the table below', () => expect(RULES.map(([id]) => id)).toEqual(limits.rules.map(({ id }) => id)));
  it.each(RULES)('%s ends in %s and stops %j', (id, verdict, blocks, at, short) => {
    expect(check(at).fired.find((rule) => rule.id === id)).toMatchObject({ verdict, blocks });
    expect(firedIds(short)).not.toContain(id);
  });
  it('fires nothing for a sound pack', () => {
    expect(check({})).toEqual({ verdict: 'fit', fired: [], missing: [], blocks: [], incomplete: null, endsAt: null });
  });
});

describe('what a hit does', () => {
  it('stops charging for the day, and every use for the hour', () => {
    expect([check({ hoursSinceImpact: 0.5 }).blocks, check({ hoursSinceImpact: 6 }).blocks, check({ hoursSinceImpact: 20 }).blocks]).toEqual([ALL, ['charge'], []]);
  });
  it.each(['dented', 'bareFoil', 'cellMoved'])('is never waited out with %s, however long ago', (sign) => {
    expect(check({ [sign]: true, hoursSinceImpact: 1000 }).verdict).toBe('isolate');
  });
});

describe('a cell above its limit', () => {
  it.each([0, 0.5, 1])('is left alone %f hours after charge', (hoursSinceCharge) => {
    expect(check({ cellMax: 4.3, hoursSinceCharge })).toMatchObject({ verdict: 'leave', endsAt: { step: 'voltage', measure: 'cellMax' } });
  });
  it('is left alone when nobody knows when it was charged', () => {
    for (const hoursSinceCharge of [undefined, 'not sure', { missing: 'the register has no charge' }]) expect(check({ cellMax: 4.3, hoursSinceCharge }).verdict).toBe('leave');
  });
  it('is isolated later', () => expect(check({ cellMax: 4.3, hoursSinceCharge: 2 }).verdict).toBe('isolate'));
});

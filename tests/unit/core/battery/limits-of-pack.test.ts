import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { chargeBand } from '@/lib/core/battery/charge-band';
import { type LimitsOfPack, limitsOfPack } from '@/lib/core/battery/limits-of-pack';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { limitsOfSchool } from '@/lib/core/battery/school-limits';
import { of, type Volts } from '@/lib/units/quantity';
import { secondCheck, secondLimits as limits, soundPack } from '@/tests/support/second-pack-limits';

const check = (change: PackMeasures) => packVerdict(limits, { ...soundPack, ...change });
function held(cellType: string | null): LimitsOfPack {
  const result = limitsOfPack(limits, cellType);
  if (!result.ok) throw new Error(result.reason);
  return result.value;
}
const band = (cellType: string | null, volts: number): string => chargeBand(held(cellType), of<Volts>(volts));

// 4.20 V: REFERENCES F.1 (READ-P). 4.35 V and its figures: common practice, no source (MEM); allowances judged.
describe('a pack that is full at 4.35 V', () => {
  const cellType = 'full-4-35';
  it('is judged by its own limit', () => {
    expect(check({ cellType, cellMax: 4.4 })).toMatchObject({ verdict: 'fit', fired: [] });
    expect(check({ cellType, cellMax: 4.401 })).toMatchObject({ verdict: 'isolate', fired: [{ id: 'cell-too-high', limit: 4.4 }] });
    expect(check({ cellType, cellMax: 4.401, hoursSinceCharge: 0 }).fired[0]).toMatchObject({ id: 'cell-too-high-on-charge', limit: 4.4 });
  });
  it('keeps every other limit', () => {
    expect(check({ cellType, cellMin: 2.9 }).verdict).toBe('isolate');
    expect(held(cellType).rules.map(({ id }) => id)).toEqual(limits.rules.map(({ id }) => id));
  });
  it('has its own bands', () => {
    expect([3.74, 3.75, 3.93, 3.94, 4.34, 4.35, 4.4, 4.41].map((volts) => band(cellType, volts)))
      .toEqual(['below storage', 'storage', 'storage', 'above storage', 'above storage', 'full', 'full', 'too high']);
  });
});

describe('a pack that is full at 4.20 V', () => {
  it('is not let to 4.35 V', () => {
    expect(check({ cellMax: 4.35 }).verdict).toBe('isolate');
    expect([band('full-4-20', 4.2), band('full-4-20', 4.25), band('full-4-20', 4.3)]).toEqual(['full', 'full', 'too high']);
  });
  it('is not let there by figures made for another pack either', () => {
    const again = packVerdict({ ...limits, ...held('full-4-20') }, { ...soundPack, cellMax: 4.3 });
    expect(again.verdict).toBe('isolate');
  });
});

describe('a pack whose full voltage is not marked', () => {
  it('is held to 4.20 V, watched and not charged', () => {
    expect(check({ cellType: 'not-marked' })).toMatchObject({ verdict: 'watch', blocks: ['charge'], incomplete: null });
    expect(check({ cellType: 'not-marked', cellMax: 4.3 }).verdict).toBe('isolate');
    expect(held('not-marked')).toEqual(held('full-4-20'));
  });
  it('is held to 4.20 V too when nobody looked', () => {
    for (const cellType of [undefined, 'not sure']) expect(check({ cellType, cellMax: 4.3 }).fired.map(({ id }) => id)).toEqual(['cell-too-high']);
    expect(band(null, 4.3)).toBe('too high');
  });
});

describe('a pack out of scope', () => {
  it.each(['full-other', 'other-chemistry'])('%s is refused in words', (cellType) => {
    const refused = limitsOfPack(limits, cellType);
    expect(refused.ok ? '' : refused.reason).toMatch(/^Out of scope: .*Do not charge/);
  });
  it.each(['full-other', 'other-chemistry'])('%s is stopped from every use, and its voltages are not judged', (cellType) => {
    const { verdict, blocks, missing } = check({ cellType, cellMin: 2.6, cellMax: 4.45 });
    expect([verdict, blocks]).toEqual(['watch', ['charge', 'fly', 'travel']]);
    expect(missing.map(({ measure }) => measure)).toEqual(['hoursFull', 'silentCells', 'cellMin', 'cellMax', 'cellSpread']);
    expect(missing[0]?.why).toContain('Out of scope');
  });
  it('still shows signs of danger', () => expect(check({ cellType: 'other-chemistry', smell: true }).verdict).toBe('leave'));
  it('is what an unknown kind of cell is, too', () => {
    expect(limitsOfPack(limits, 'full-9-99')).toEqual({ ok: false, reason: 'there is no cell type called full-9-99' });
    expect(check({ cellType: 'full-9-99' })).toMatchObject({ verdict: 'watch', blocks: ['charge', 'fly', 'travel'] });
  });
});

describe('the first edition', () => {
  it('knows one kind of cell', () => {
    const result = limitsOfPack(edition1.packLimits, 'full-4-35');
    expect(result.ok && result.value.rules).toEqual(edition1.packLimits.rules);
  });
});

describe('a school', () => {
  it('sets the limit of each kind of cell apart, and the one on charge goes with it', () => {
    const own = limitsOfSchool(limits, { 'cell-too-high': 4.2, 'full-4-35/cell-too-high': 4.36, 'full-4-35/storageCharge': 3.8 });
    if (!own.ok) throw new Error(own.reason);
    const firedIn = (change: PackMeasures): string[] => packVerdict(own.value, { ...soundPack, hoursSinceCharge: 0, ...change }).fired.map(({ id, limit }) => `${id} ${limit}`);
    expect(firedIn({ cellMax: 4.21 })).toEqual(['cell-too-high-on-charge 4.2', 'cell-too-high 4.2']);
    expect(firedIn({ cellType: 'full-4-35', cellMax: 4.37 })).toEqual(['cell-too-high-on-charge 4.36', 'cell-too-high 4.36']);
    expect(own.value.check?.cellTypes.find(({ id }) => id === 'full-4-35')).toMatchObject({ storageCharge: { target: 3.8 } });
    expect(secondCheck.cellTypes.find(({ id }) => id === 'full-4-35')).toMatchObject({ storageCharge: { target: 3.85 } });
  });
  it('cannot lift a 4.20 V pack towards 4.35 V', () => {
    expect(limitsOfSchool(limits, { 'cell-too-high': 4.3 })).toMatchObject({ ok: false });
    expect(limitsOfSchool(limits, { 'full-4-35/cell-too-high': 4.41 })).toMatchObject({ ok: false });
    expect(limitsOfSchool(limits, { 'full-4-20/cell-too-high': 4.25 })).toEqual({ ok: false, reason: 'there is no limit called full-4-20/cell-too-high' });
    expect(limitsOfSchool(limits, { 'cell-too-high-on-charge': 4.2 })).toEqual({ ok: false, reason: 'cell-too-high-on-charge is fixed' });
  });
});

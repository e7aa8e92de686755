import { describe, expect, it } from 'vitest';
import { packLimitFaults } from '@/lib/content/checks/numbers';
import { packCheckFaults } from '@/lib/content/checks/pack-check';
import { edition1 } from '@/lib/content/edition-1';
import type { Content, PackCheck, PackLimits } from '@/lib/content/model';
import { packLimitsSchema } from '@/lib/content/schema/packs';
import { secondCheck, secondLimits } from '@/tests/support/second-pack-limits';

type Loose<T> = T extends readonly (infer Item)[] ? Loose<Item>[] : T extends object ? { -readonly [Key in keyof T]: Loose<T[Key]> } : T;
interface Draft { limits: Loose<PackLimits>; check: Loose<PackCheck> }

const copy = (): Draft => {
  const limits = structuredClone(secondLimits) as Loose<PackLimits>;
  const check = structuredClone(secondCheck) as Loose<PackCheck>;
  limits.check = check;
  return { limits, check };
};
const withPacks = (packLimits: PackLimits): Content => ({ ...edition1, packLimits });
const found = <T extends { id: string }>(items: T[], id: string): T => {
  const item = items.find((candidate) => candidate.id === id);
  if (item === undefined) throw new Error(`no ${id} in the draft`);
  return item;
};
const highVoltage = (check: Loose<PackCheck>) => {
  const type = found(check.cellTypes, 'full-4-35');
  if (type.sort !== 'own figures') throw new Error('4.35 V has no figures of its own');
  return type;
};

it('the packs of the second edition have no fault', () => {
  const content = withPacks(secondLimits);
  expect([...packLimitFaults(content), ...packCheckFaults(content)]).toEqual([]);
});
it('the first edition has no check, and no fault for that', () => expect(packCheckFaults(edition1)).toEqual([]));
it('an unknown field of a check is refused', () => {
  expect(packLimitsSchema.safeParse({ ...secondLimits, check: { ...secondCheck, colour: 'red' } }).success).toBe(false);
  expect(packLimitsSchema.safeParse({ ...secondLimits, check: undefined }).success).toBe(true);
});

const SPOILT: [string, (draft: Draft) => void, string][] = [
  ['a rule that stops nothing it should', ({ limits }) => { found(limits.rules, 'dented').blocks = ['charge']; }, 'pack rule dented: isolate stops every use'],
  ['a rule that does not say what it stops', ({ limits }) => { delete found(limits.rules, 'old').blocks; }, 'pack rule old: does not say what it stops'],
  ['doubt that lets a smell pass', ({ limits }) => { delete found(limits.rules, 'smell').doubtCounts; }, 'pack rule smell: doubt must count as the sign'],
  ['a rule that follows none', ({ limits }) => { found(limits.rules, 'cell-too-high-on-charge').follows = 'cell-low'; }, 'pack rule cell-too-high-on-charge: follows no rule of its measure and figure, or has a range of its own'],
  ['a measure of another kind', ({ limits }) => { found(limits.rules, 'swollen').value = 1; }, 'pack rule swollen: swollen is unknown or of another kind'],
  ['an exception nobody measures', ({ limits }) => { found(limits.rules, 'second-hand').unless = { measure: 'luck', op: '=', value: true }; }, 'pack rule second-hand: luck is unknown or of another kind'],
  ['a rule for a cell nobody knows', ({ limits }) => { found(limits.rules, 'chemistry-other').value = 'nickel'; }, 'pack rule chemistry-other: cellType is unknown or of another kind'],
  ['a danger that shows only in the hand', ({ check }) => { found(check.steps, 'warmth').handles = true; }, 'pack rule hot-at-rest: shows only once somebody handles the pack'],
  ['an exception asked too late', ({ check }) => { found(check.steps, 'record').measures = found(check.steps, 'record').measures.filter((id) => id !== 'hoursSinceCharge'); found(check.steps, 'wear').measures.push('hoursSinceCharge'); }, 'pack rule cell-too-high-on-charge: its exception is asked too late'],
  ['a measure asked twice', ({ check }) => { found(check.steps, 'wear').measures.push('smell'); }, 'pack measure smell: is not asked in exactly one step'],
  ['a question without a measure', ({ check }) => { found(check.steps, 'look').measures.push('colour'); }, 'pack check: asks for colour, which is no measure'],
  ['the meter before the nose', ({ check }) => { check.steps.unshift(...check.steps.splice(5, 1)); }, 'pack check: its order is not look, listen, smell, warmth, voltage'],
  ['voltage without hands', ({ check }) => { found(check.steps, 'voltage').handles = false; }, 'pack check: voltage is taken by hand'],
  ['a verdict without words', ({ check }) => { check.verdicts.pop(); }, 'pack verdicts: not one set of words for each verdict, in order'],
  ['a gap that counts as fit', ({ check }) => { check.incomplete.verdict = 'fit'; }, 'incomplete check: must not come out as the mildest verdict'],
  ['a need nobody can meet', ({ check }) => { check.incomplete.needs.push(['colour']); }, 'incomplete check: needs colour, which is no measure'],
  ['release of a swollen pack', ({ check }) => { check.release.neverAfter = ['leave']; }, 'release: lets a pack go that showed a sign of its own'],
  ['a sign that is called none', ({ check }) => { check.release.noSign.push('dented'); }, 'release: dented is no rule of watch'],
  ['a figure that rests on nothing', ({ check }) => { check.alike.temperature.kind = 'obvious'; }, 'pack check: kind "obvious"'],
  ['two standards', ({ check }) => { const [first] = check.cellTypes; if (first !== undefined) check.cellTypes.push({ ...first, id: 'second' }); }, 'cell types: not exactly one standard'],
  ['an unmarked pack that may be charged', ({ limits }) => { found(limits.rules, 'full-voltage-not-marked').blocks = ['fly']; }, 'cell type not-marked: may be charged, although nobody knows what it is'],
  ['a pack out of scope that may travel', ({ limits }) => { found(limits.rules, 'full-voltage-other').blocks = ['charge', 'fly']; }, 'cell type full-other: is out of scope, but not stopped'],
  ['a figure of cells for age', ({ check }) => { found(highVoltage(check).rules, 'cell-too-high').id = 'old'; }, 'cell type full-4-35: has a figure for old, which is no rule of cells'],
  ['a cell let above its range', ({ check }) => { found(highVoltage(check).rules, 'cell-too-high').value = 4.5; }, 'cell type full-4-35: cell-too-high outside what a school may set'],
  ['storage charge that is full', ({ check }) => { highVoltage(check).storageCharge.high = 4.35; }, 'cell type full-4-35: its storage charge does not lie between its ends, or not below full'],
];

describe('packCheckFaults', () => {
  it.each(SPOILT)('finds %s', (_, spoil, expected) => {
    const draft = copy();
    spoil(draft);
    const problems = packCheckFaults(withPacks(draft.limits as PackLimits)).map(({ where, problem }) => `${where}: ${problem}`);
    expect(problems).toContain(expected);
  });
});

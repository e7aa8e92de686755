import { describe, expect, it } from 'vitest';
import { contentFaults } from '@/lib/content/checks';
import { edition1 } from '@/lib/content/edition-1';
import { editions } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';

type Loose<T> = T extends readonly (infer Item)[] ? Loose<Item>[] : T extends object ? { -readonly [Key in keyof T]: Loose<T[Key]> } : T;
type Draft = Loose<Content>;

const copy = (): Draft => structuredClone(edition1) as Draft;
const found = <T extends { id: string }>(items: T[], id: string): T => {
  const item = items.find((candidate) => candidate.id === id);
  if (item === undefined) throw new Error(`no ${id} in the draft`);
  return item;
};
const optionsOf = (draft: Draft, id: string) => {
  const question = found(draft.questions, id);
  if (question.kind !== 'choice' && question.kind !== 'multi') throw new Error(`${id} has no options`);
  return question.options;
};
const problems = (draft: Draft): string[] => contentFaults(draft as Content).map(({ where, problem }) => `${where}: ${problem}`);

it.each(editions)('edition $edition has no fault', ({ content }) => {
  expect(contentFaults(content)).toEqual([]);
});

const SPOILT: [string, (draft: Draft) => void, string][] = [
  ['an id twice', (d) => { d.stops[1]!.id = d.stops[0]!.id; }, 'stops: charge-on-exit twice'],
  ['an id with a space', (d) => { d.stops[0]!.id = 'way out'; }, 'stops: way out is not a plain id'],
  ['a procedure trusted like a thing', (d) => { found(d.controls, 'attended-charging').pfd = 0.02; }, 'control attended-charging: pfd 0.02 is below 0.1 or not below 1'],
  ['an error factor without spread', (d) => { found(d.controls, 'charge-box').errorFactor = 1; }, 'control charge-box: errorFactor must be above 1 and at most 10'],
  ['an unknown group', (d) => { found(d.controls, 'charge-box').group = 'boxes'; }, 'control charge-box: group boxes is unknown'],
  ['a group of one', (d) => { found(d.controls, 'charge-bag').group = null; }, 'group charge-container: has fewer than two controls'],
  ['an unknown money band', (d) => { found(d.controls, 'charge-box').effort.moneyBand = 4; }, 'control charge-box: money band 4 is unknown'],
  ['a number that rests on nothing', (d) => { found(d.controls, 'charge-box').kind = 'obvious'; }, 'control charge-box: kind "obvious"'],
  ['a control of a wrong role', (d) => { found(d.controls, 'gentle-rate').role = 'mitigate'; }, 'control gentle-rate: role mitigate, but never mitigates'],
  ['an unknown exposure', (d) => { d.scenarios[0]!.exposureBase = 'hours'; }, 'scenario charge-runaway: exposure hours is unknown'],
  ['an unknown control in a path', (d) => { d.scenarios[0]!.preventive[0]!.control = 'luck'; }, 'scenario charge-runaway: unknown control luck'],
  ['reach of nothing', (d) => { d.scenarios[0]!.preventive[0]!.reach = 0; }, 'scenario charge-runaway: reach of balance-charger must be above 0 and at most 1'],
  ['too few means', (d) => { d.scenarios[0]!.preventive.splice(2); }, 'scenario charge-runaway: fewer than 3 preventive controls'],
  ['one control on both sides', (d) => { d.scenarios[0]!.branches[0]!.mitigating.push({ control: 'gentle-rate', reach: 1 }); }, 'scenario charge-runaway/smoke: gentle-rate both prevents and mitigates on one path'],
  ['a sprinkler against smoke', (d) => { d.scenarios[0]!.branches[0]!.mitigating.push({ control: 'sprinkler', reach: 1 }); }, 'scenario charge-runaway/smoke: sprinkler cannot reduce people-smoke'],
  ['a section nobody has', (d) => { d.questions[0]!.section = 'attic'; }, 'question team-packs: section attic is unknown'],
  ['an option that leaves a control open', (d) => { optionsOf(d, 'table-surface')[0]!.sets.controls = {}; }, 'question table-surface: option yes leaves surface-charging open'],
  ['a control set by two questions', (d) => { optionsOf(d, 'room-building')[0]!.sets.controls['charge-box'] = 'in place'; }, 'control charge-box: is set by room-building and table-container'],
  ['a control nobody asks about', (d) => { d.questions = d.questions.filter(({ id }) => id !== 'store-check'); }, 'control store-check: cannot be reached from any answer'],
  ['an input nobody asks about', (d) => { d.questions = d.questions.filter(({ id }) => id !== 'electric-load'); }, 'input chargers: cannot be reached from any answer'],
  ['a question that waits for a later one', (d) => { d.questions[0]!.showIf = { input: 'airTrips', op: '>', value: 0 }; }, 'question team-packs: depends on airTrips, asked later or never'],
  ['a field wider than its input', (d) => { const q = found(d.questions, 'room-size'); if (q.kind === 'number') q.fields[0]!.max = 60000; }, "question room-size: range of chargingVolume is empty or wider than the input's own"],
  ['a stop on an unknown control', (d) => { d.stops[0]!.when = { control: 'luck', in: ['absent'] }; }, 'stop charge-on-exit: control luck is unknown'],
  ['a stop with nothing to compare', (d) => { d.stops[0]!.when = { derived: 'loadShare', op: '>' }; }, 'stop charge-on-exit: loadShare needs either a value or an input to compare with'],
  ['a formula with an unknown name', (d) => { found(d.exposures, 'charges').formula = 'packs * moons'; }, 'formula of charges: moons is unknown'],
  ['a middle outside its range', (d) => { found(d.physics, 'hfYield').mid = 300; }, 'physics hfYield: low, mid and high must rise'],
  ['a constant outside its range', (d) => { found(d.constants, 'closedAch').value = 1; }, 'constant closedAch: must lie between low and high'],
  ['a dose that grows', (d) => { d.aegl.HF['2'][4] = 99; }, 'aegl HF 2: must not rise with duration'],
  ['a pack limit looser than the trade', (d) => { found(d.packLimits.rules, 'spread').value = 0.2; }, 'pack rule spread: value outside what a school may set'],
  ['a score without a grade', (d) => { d.matrices[0]!.grades[0]!.to = 2; }, 'matrix five-by-five: score 3 has no grade or more than one'],
  ['likelihood with a gap', (d) => { d.matrices[0]!.likelihood[2]!.from = 0.02; }, 'matrix five-by-five: likelihood level 2 leaves a gap above it'],
  ['weights that fall', (d) => { d.harmWeights['5'] = 10; }, 'harmWeights: must rise with the class'],
];

describe('a spoilt edition', () => {
  it.each(SPOILT)('with %s is found out', (_, spoil, expected) => {
    const draft = copy();
    spoil(draft);
    expect(problems(draft)).toContain(expected);
  });
});

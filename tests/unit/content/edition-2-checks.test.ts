import { describe, expect, it } from 'vitest';
import { contentFaults } from '@/lib/content/checks';
import { edition2 } from '@/lib/content/edition-2';
import type { Content, Question } from '@/lib/content/model';

type Loose<T> = T extends readonly (infer Item)[] ? Loose<Item>[] : T extends object ? { -readonly [Key in keyof T]: Loose<T[Key]> } : T;
type Draft = Loose<Content>;
type Kind = Question['kind'];

const copy = (): Draft => structuredClone(edition2) as Draft;
const found = <T extends { id: string }>(items: T[] | undefined, id: string): T => {
  const item = items?.find((candidate) => candidate.id === id);
  if (item === undefined) throw new Error(`no ${id} in the draft`);
  return item;
};
function asked<K extends Kind>(draft: Draft, id: string, kind: K): Loose<Extract<Question, { kind: K }>> {
  const question = found(draft.questions, id);
  if (question.kind !== kind) throw new Error(`${id} is no ${kind}`);
  return question as Loose<Extract<Question, { kind: K }>>;
}
const problems = (draft: Draft): string[] => contentFaults(draft as Content).map(({ where, problem }) => `${where}: ${problem}`);

const SPOILT: [string, (draft: Draft) => void, string][] = [
  ['a stop that says nothing of acceptance', (d) => { delete found(d.stops, 'no-net').acceptable; }, 'stop no-net: does not say whether it may be accepted'],
  ['a stop put off for a season', (d) => { const a = found(d.stops, 'no-net').acceptable; if (a?.kind === 'until') a.days = 31; }, 'stop no-net: may be put off for at most 30 days'],
  ['a move of an unknown input', (d) => { found(d.controls, 'store-away').moves = [{ input: 'luck', to: 1, only: 'always' }]; }, 'control store-away: moves luck, which is unknown'],
  ['a move out of range', (d) => { found(d.controls, 'store-away').moves = [{ input: 'storageOutdoor', to: 2, only: 'always' }]; }, 'control store-away: moves storageOutdoor out of its range'],
  ['a move that compares words', (d) => { found(d.controls, 'store-away').moves = [{ input: 'airMode', to: 'closed', only: 'if lower' }]; }, 'control store-away: moves airMode by comparing words'],
  ['a question on no page', (d) => { found(d.pages, 'table').questions.pop(); }, 'pages: must hold every question once, in the order of the questions'],
  ['a page over two sections', (d) => { asked(d, 'table-fuel', 'choice').section = 'room'; }, 'page table: mixes sections, or holds a question that is not there'],
  ['a line that sets two controls', (d) => { found(asked(d, 'store-keep', 'ticks').options, 'cool').sets.controls['not-alone'] = 'in place'; }, 'question store-keep: line cool must put one control in place'],
  ['a line that sets an input', (d) => { found(asked(d, 'store-keep', 'ticks').options, 'cool').sets.inputs['storageAch'] = 1; }, 'question store-keep: line cool sets an input'],
  ['minutes of a length', (d) => { asked(d, 'room-size', 'number').fields[0]!.entry = 'minutes and seconds'; }, 'question room-size: chargingLength is no time in seconds'],
  ['of ten packs', (d) => { asked(d, 'table-packs', 'number').fields[0]!.entry = 'of ten'; }, 'question table-packs: packsOnTable is no share'],
  ['an earlier field for one asked elsewhere', (d) => { const earlier = asked(d, 'room-size', 'number').fields[3]!.earlier; if (earlier !== undefined) earlier.replaces = ['arenaLength']; }, 'question room-size: chargingVolume replaces arenaLength, which is not asked here'],
  ['a part of a number asked elsewhere', (d) => { asked(d, 'travel-trips', 'number').fields[1]!.noMoreThan = 'packs'; }, 'question travel-trips: warmTrips is held to packs, which is not asked here'],
  ['a question with earlier fields only', (d) => { for (const field of asked(d, 'room-people', 'number').fields) field.earlier = { replaces: [] }; }, 'question room-people: asks for nothing'],
  ['a state when hidden for what is never hidden', (d) => { asked(d, 'table-fuel', 'choice').hiddenAs = 'in place'; }, 'question table-fuel: says what it is when hidden, and is never hidden'],
  ['a choice of one', (d) => { for (const option of asked(d, 'table-fuel', 'choice').options.slice(1)) option.earlier = true; }, 'question table-fuel: offers no choice'],
  ['an option out of the range of its input', (d) => { found(asked(d, 'store-air', 'choice').options, 'fan').sets.inputs['storageAch'] = 90; }, 'question store-air: option fan sets storageAch out of its range'],
  ['a grade that falls', (d) => { d.tableMatrices![1]!.cells[2]![0] = 'low'; d.tableMatrices![1]!.cells[1]![0] = 'moderate'; }, 'matrix three-by-three: a grade falls where the risk rises'],
  ['a matrix short of a row', (d) => { d.tableMatrices![1]!.cells.pop(); }, 'matrix three-by-three: needs a row for each level and five classes'],
  ['charge that falls with voltage', (d) => { d.restVoltage!.points[3]!.charge = 1; }, 'restVoltage: must rise in both columns'],
  ['air without a middle', (d) => { d.airClasses![0]!.mid = 9; }, 'air class shut: low, mid and high must rise'],
];

describe('a spoilt second edition', () => {
  it.each(SPOILT)('with %s is found out', (_, spoil, expected) => {
    const draft = copy();
    spoil(draft);
    expect(problems(draft)).toContain(expected);
  });
});

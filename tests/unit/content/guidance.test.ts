import { describe, expect, it } from 'vitest';
import { contentFaults } from '@/lib/content/checks';
import { guidanceFaults } from '@/lib/content/checks/guidance';
import { currentContent } from '@/lib/content/editions';
import inputs2 from '@/lib/content/edition-2/inputs.json';
import { guidance2 } from '@/lib/content/guidance-2';
import type { Guidance, GuidanceText } from '@/lib/content/model';
import { asGuidance } from '@/lib/content/schema/guidance';
import { orderIntoDanger } from '@/tests/support/texts/orders-into-danger';
import { sentencesOf } from '@/tests/support/texts/sentences';

type Loose<T> = T extends readonly (infer Item)[] ? Loose<Item>[] : T extends object ? { -readonly [Key in keyof T]: Loose<T[Key]> } : T;
type Draft = Loose<Guidance>;

const draft = (): Draft => structuredClone(guidance2) as Draft;
const text = (id: string): GuidanceText => {
  const found = guidance2.texts.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no guidance ${id}`);
  return found;
};
const wordsOf = ({ lines }: GuidanceText): string => lines.map((line) => `${line.lead} ${line.text ?? ''}`).join(' ');

/** The situations that the second edition must have words for. */
const SITUATIONS = [
  'smoke', 'hot-no-smoke', 'swollen-cool', 'somebody-missing', 'first-aid', 'caller', 'recording', 'extinguishers', 'sand', 'opening-store', 'isolating', 'outdoor-spot',
  'after-crash', 'after-fire', 'dispose-sound', 'dispose-damaged', 'travel-road', 'vehicle-smoke', 'travel-air-flight', 'charging-alone', 'before-break', 'detector-off',
  'smell-no-fire', 'spectators', 'first-aiders', 'reporting-duty', 'privacy', 'counterfeit', 'plugs', 'smoke-figure',
];
/** Where somebody may stand beside a pack that acts: the way out comes with the number to call. */
const ALARMS = ['smoke', 'hot-no-smoke', 'swollen-cool', 'somebody-missing', 'first-aid', 'opening-store', 'isolating', 'after-crash', 'vehicle-smoke', 'charging-alone', 'smell-no-fire', 'plugs', 'dispose-damaged'];

describe('the guidance of the second edition', () => {
  it('has a text for every situation, and no fault', () => {
    expect(guidance2.texts.map(({ id }) => id)).toEqual(SITUATIONS);
    expect(guidanceFaults(guidance2, inputs2.inputs)).toEqual([]);
  });

  it('says the same five steps at smoke and at a hot pack, which nobody touches first', () => {
    expect(text('smoke').lines).toHaveLength(5);
    expect(text('hot-no-smoke').lines.slice(1)).toEqual(text('smoke').lines);
    expect(text('hot-no-smoke').lines[0]?.lead).toBe('Do not touch, unplug or carry it.');
  });

  it.each(ALARMS)('%s gives the number to call', (id) => { expect(wordsOf(text(id))).toContain('{number}'); });

  it('keeps every step for the hands away from the alarm', () => {
    const never = (id: string) => text(id).neverBeside.flatMap((one) => ('guidance' in one ? [one.guidance] : []));
    expect(never('smoke')).toEqual(expect.arrayContaining(['isolating', 'opening-store', 'extinguishers']));
    expect(never('hot-no-smoke')).toContain('isolating');
    expect(never('isolating')).toEqual(expect.arrayContaining(['smoke', 'hot-no-smoke']));
  });

  it('shows no time to spare beside an alarm', () => {
    for (const id of ['smoke', 'hot-no-smoke', 'somebody-missing', 'vehicle-smoke']) {
      expect(text(id).neverBeside.some((one) => 'shown' in one && one.shown.includes('a time until the air is dangerous'))).toBe(true);
      expect(wordsOf(text(id))).not.toMatch(/\d+ ?(?:s|min|seconds|minutes)\b/);
    }
  });

  it('lets nobody isolate but a trained adult, after five conditions, and ends it at any change', () => {
    const [first, , carried, ended] = text('isolating').lines;
    expect(text('isolating').audience).toEqual(['trained adult']);
    expect(first?.lead).toBe('All five must hold: cool, quiet, dry, no smell, not growing.');
    expect(first?.text).toContain('Any doubt: leave it where it is.');
    expect(carried?.text).toContain('Never a student.');
    expect(ended?.lead).toContain('put it down, walk away, call');
  });

  it('sends everybody who breathed smoke to a doctor the same day', () => {
    for (const id of ['first-aid', 'after-fire']) expect(wordsOf(text(id))).toMatch(/[Ee]verybody (?:else )?who breathed smoke sees a doctor the same day/);
  });

  it.each(guidance2.texts.map((one) => [one.id, one] as const))('%s is short, speaks to the reader and orders nobody into danger', (_, one) => {
    expect(one.lines.length).toBeLessThanOrEqual(8);
    const sentences = one.lines.flatMap((line) => sentencesOf(`${line.lead} ${line.text ?? ''}`));
    expect(sentences.filter((sentence) => sentence.split(' ').length > 40)).toEqual([]);
    expect(sentences.filter(orderIntoDanger)).toEqual([]);
    expect(one.basis.some(({ kind }) => kind === 'our judgement' || kind === 'common practice, no source')).toBe(true);
  });
});

describe('the checks of guidance', () => {
  it.each<[string, (copy: Draft) => void, string]>([
    ['an id twice', (copy) => { copy.texts[1]!.id = 'smoke'; }, 'guidance: smoke twice'],
    ['a field nobody fills in', (copy) => { copy.texts[0]!.lines[0]!.text = 'Call {doctor}.'; }, 'guidance smoke: field {doctor} is unknown'],
    ['a field that is not defined', (copy) => { copy.fields.splice(0, 1); }, 'guidance smoke: field {number} is unknown'],
    ['a field held by an input nobody has', (copy) => { copy.fields[0]!.input = 'luck'; }, 'guidance field number: input luck is unknown'],
    ['an open brace', (copy) => { copy.texts[0]!.lines[0]!.lead = 'Call {number.'; }, 'guidance smoke: a brace is open in "Call {number."'],
    ['a text that must not stand beside an unknown one', (copy) => { copy.texts[0]!.neverBeside = [{ guidance: 'luck', why: 'x' }]; }, 'guidance smoke: never beside luck, which is unknown or itself'],
  ])('find %s', (_, spoil, problem) => {
    const copy = draft();
    spoil(copy);
    expect(guidanceFaults(copy, inputs2.inputs).map((fault) => `${fault.where}: ${fault.problem}`)).toContain(problem);
  });

  it('are part of the checks of an edition', () => {
    const copy = draft();
    copy.texts[1]!.id = 'smoke';
    expect(contentFaults({ ...currentContent, guidance: copy })).toContainEqual({ where: 'guidance', problem: 'smoke twice' });
  });

  it.each<[string, (copy: Draft) => void]>([
    ['a text that nobody is to confirm', (copy) => { delete (copy.texts[0] as { confirm?: string }).confirm; }],
    ['a source that does not say whether it was read', (copy) => { copy.texts[0]!.basis = [{ kind: 'published', source: 'REFERENCES F.4', carries: 'x' }]; }],
    ['a text without a line', (copy) => { copy.texts[0]!.lines = []; }],
    ['words for a missing field that are empty', (copy) => { copy.fields[0]!.whenNotSet = ''; }],
    ['an audience nobody knows', (copy) => { (copy.texts[0]!.audience as string[])[0] = 'firefighter'; }],
  ])('refuse %s', (_, spoil) => {
    const copy = draft();
    spoil(copy);
    expect(() => asGuidance(copy)).toThrow();
  });
});

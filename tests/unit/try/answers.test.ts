import { describe, expect, it } from 'vitest';
import { goodOption } from '@/app/_components/questions/good-option';
import { namesSetBy, questionFor } from '@/lib/questionnaire/names-set-by';
import { numberFormSchema, typedFrom } from '@/lib/questionnaire/number-form';
import { overridesOf, withoutOverride } from '@/app/try/_answers/overrides';
import { questionsOfStop } from '@/app/_components/result/question-of-stop';
import { currentContent } from '@/lib/content/editions';

const byId = (id: string) => {
  const found = currentContent.questions.find((question) => question.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
};
const fields = [{ input: 'volume', label: 'volume', unit: 'm³', min: 4, max: 50_000 }, { input: 'gap', label: 'gap', unit: 'm²', min: 0, max: 50 }];

describe('the boxes of a number question', () => {
  it('reads numbers, and leaves an empty box out instead of taking it for zero', () => {
    expect(numberFormSchema(fields).parse({ volume: ' 180 ', gap: '' })).toEqual({ volume: 180, gap: undefined });
    expect(numberFormSchema(fields).parse({ volume: '180,5', gap: '0' })).toEqual({ volume: 180.5, gap: 0 });
  });

  it('says what would be right, for each box by itself', () => {
    const read = numberFormSchema(fields).safeParse({ volume: '2', gap: '1,000' });
    expect(read.error?.issues.map((issue) => [issue.path[0], issue.message])).toEqual([
      ['volume', 'Enter a number from 4 to 50,000 m³'],
      ['gap', expect.stringContaining('two ways')],
    ]);
  });

  it('writes an answer so that it reads back as the same number', () => {
    for (const value of [0, 4, 0.31, 12_345.678, 5e-8]) {
      expect(Number(typedFrom(fields, { gap: value })['gap'])).toBe(value);
    }
    expect(typedFrom(fields, 'not sure')).toEqual({ volume: '', gap: '' });
  });
});

describe('what a question sets', () => {
  it('is found from every control and input a stop condition names', () => {
    const stop = (id: string) => currentContent.stops.find((one) => one.id === id) ?? currentContent.stops[0];
    const asked = (id: string) => { const found = stop(id); return found === undefined ? [] : questionsOfStop(currentContent, found).map((question) => question.id); };
    expect(asked('no-outdoor-spot')).toEqual(['damaged-outdoors']);
    expect(asked('over-energy-limit')).toContain('team-limit');
    expect(asked('bare-on-burnable')).toEqual(expect.arrayContaining(['table-container', 'table-surface']));
  });

  it('covers every control, so that each can be gone to', () => {
    const lost = currentContent.controls.filter((control) => questionFor(currentContent, control.id) === undefined);
    expect(lost.map((control) => control.id)).toEqual([]);
    expect(namesSetBy(byId('team-packs'))).toContain('packWh');
  });

  it('has one good option at most, and only when that puts something in place', () => {
    const surface = byId('table-surface');
    const container = byId('table-container');
    const officer = byId('team-officer');
    expect(surface.kind === 'choice' && goodOption(surface)?.id).toBe('yes');
    expect(container.kind === 'choice' && goodOption(container)?.label).toContain('rigid box');
    expect(officer.kind === 'choice' && goodOption(officer)).toBeNull();
  });
});

describe('what a document writes over an answer', () => {
  const whole = { answers: { 'response-ready': [] }, states: { 'first-aid': { state: 'in place', reason: 'seen on site' } }, inputs: { crashShare: 0.25 } };

  it('is shown with its reason and can be taken out, and nothing else with it', () => {
    const [override] = overridesOf(byId('response-ready'), whole);
    expect(override).toEqual({ part: 'states', id: 'first-aid', value: 'in place (seen on site)' });
    if (override === undefined) return;
    expect(withoutOverride(whole, override)).toEqual({ ...whole, states: {} });
    expect(overridesOf(byId('team-use'), whole)).toEqual([{ part: 'inputs', id: 'crashShare', value: '0.25' }]);
  });
});

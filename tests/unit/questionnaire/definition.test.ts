import { describe, expect, it } from 'vitest';
import { editions } from '@/lib/content/editions';
import type { Content, Question } from '@/lib/content/model';
import { controlsSetBy, inputsSetBy } from '@/lib/content/question-sets';
import type { Answer } from '@/lib/core/document';
import { resolve } from '@/lib/questionnaire/resolve';

type Answers = Readonly<Record<string, Answer>>;

/** Every answer that could decide whether another question applies. */
function possibleAnswers(question: Question): readonly Answer[] {
  if (question.kind === 'choice') return question.options.map((option) => option.id);
  if (question.kind === 'multi' || question.kind === 'ticks') return [question.options.map((option) => option.id)];
  if (question.kind === 'text') return ['somewhere'];
  const ends = (end: 'min' | 'max') => Object.fromEntries(question.fields.map((field) => [field.input, field[end]]));
  return [ends('max'), ends('min')];
}

/** Walks from the first question, trying every answer of those that decide, and notes which are ever asked. */
function reachable(content: Content): ReadonlySet<string> {
  const seen = new Set<string>();
  const deciding = new Set(content.questions.flatMap(({ showIf }) => (showIf === undefined ? [] : [...JSON.stringify(showIf).matchAll(/"(?:input|control)":"([^"]+)"/g)].map(([, id]) => id))));
  const walk = (answers: Answers): void => {
    const { current } = resolve(content, answers);
    if (current === null) return;
    seen.add(current.id);
    const decides = [...inputsSetBy(current), ...controlsSetBy(current)].some((id) => deciding.has(id));
    for (const answer of decides ? possibleAnswers(current) : possibleAnswers(current).slice(0, 1)) walk({ ...answers, [current.id]: answer });
  };
  walk({});
  return seen;
}

describe.each(editions)('edition $edition', ({ content }) => {
  it('asks every question to somebody', () => {
    expect([...reachable(content)].sort()).toEqual(content.questions.map(({ id }) => id).sort());
  });

  it('sets every control by exactly one question, and sets no control it does not have', () => {
    const set = content.questions.flatMap(controlsSetBy);
    expect([...set].sort()).toEqual(content.controls.map(({ id }) => id).sort());
  });

  it('asks for every input, and for no input it does not have', () => {
    const asked = new Set(content.questions.flatMap(inputsSetBy));
    expect([...asked].sort()).toEqual(content.inputs.map(({ id }) => id).sort());
  });

  it('lets somebody reach the best state of every control', () => {
    const best = new Set(content.questions.flatMap((question) => ('options' in question ? question.options : []))
      .flatMap((option) => Object.entries(option.sets.controls)).filter(([, state]) => state === 'in place').map(([control]) => control));
    expect([...best].sort()).toEqual(content.controls.map(({ id }) => id).sort());
  });

  it('has a question in every section, in the order of the sections', () => {
    const order = content.questions.map(({ section }) => section).filter((section, at, all) => section !== all[at - 1]);
    expect(order).toEqual(content.sections.map(({ id }) => id));
  });
});

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

/** Questions that decide whether another applies, also through whether they apply themselves. */
function deciding(content: Content, question: Question, seen: ReadonlySet<string> = new Set()): ReadonlySet<string> {
  const names = new Set([...JSON.stringify(question.showIf ?? {}).matchAll(/"(?:input|control)":"([^"]+)"/g)].map(([, name]) => name));
  const found = content.questions.filter((other) => !seen.has(other.id) && [...inputsSetBy(other), ...controlsSetBy(other)].some((name) => names.has(name)));
  return found.reduce((all, other) => deciding(content, other, all), new Set([...seen, ...found.map(({ id }) => id)]) as ReadonlySet<string>);
}

/** Tries every answer of the questions that decide, in every combination, until the question is asked. */
function canBeAsked(content: Content, question: Question): boolean {
  const ids = deciding(content, question);
  const tryAll = (open: readonly Question[], answers: Answers): boolean => {
    const [next, ...rest] = open;
    if (next === undefined) return resolve(content, answers).path.includes(question);
    return possibleAnswers(next).some((answer) => tryAll(rest, { ...answers, [next.id]: answer }));
  };
  return tryAll(content.questions.filter(({ id }) => ids.has(id)), {});
}

describe.each(editions)('edition $edition', ({ content }) => {
  it('asks every question to somebody', () => {
    expect(content.questions.filter((question) => !canBeAsked(content, question)).map(({ id }) => id)).toEqual([]);
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

import type { Content, Question } from '@/lib/content/model';

/** Inputs that a question sets. */
export function inputsSetBy(question: Question): readonly string[] {
  if (question.kind === 'text') return [question.field.input];
  if (question.kind === 'number') return question.fields.map((field) => field.input);
  return [...new Set(question.options.flatMap((option) => Object.keys(option.sets.inputs)))];
}

/** Controls and inputs that a question sets. */
export function namesSetBy(question: Question): readonly string[] {
  if (question.kind === 'text' || question.kind === 'number') return inputsSetBy(question);
  return [...inputsSetBy(question), ...question.options.flatMap((option) => Object.keys(option.sets.controls))];
}

/** The question that asks for a control or an input; each is asked by one, if at all. */
export function questionFor(content: Content, name: string): Question | undefined {
  return content.questions.find((question) => namesSetBy(question).includes(name));
}

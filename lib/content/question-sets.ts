import type { Question } from './model';

/** @returns ids of the controls whose state a question decides, each once */
export function controlsSetBy(question: Question): readonly string[] {
  if (question.kind === 'number' || question.kind === 'text') return [];
  return [...new Set(question.options.flatMap((option) => Object.keys(option.sets.controls)))];
}

/** @returns ids of the inputs that a question asks for or sets, each once */
export function inputsSetBy(question: Question): readonly string[] {
  if (question.kind === 'text') return [question.field.input];
  if (question.kind === 'number') return question.fields.map((field) => field.input);
  return [...new Set(question.options.flatMap((option) => Object.keys(option.sets.inputs)))];
}

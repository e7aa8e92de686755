import type { NumberField, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { durationWords } from './measures';
import { exact } from './numbers';

const NOT_SURE = 'not sure';

/**
 * An answer as it is read on paper: the words of the option, each line with what was said of it, each figure
 * with its unit. Nothing answered is the empty text.
 * @param notSureTicks lines or options that were left open on purpose
 */
export function answerWords(question: Question, answer: Answer | null | undefined, notSureTicks: readonly string[] = []): string {
  if (answer === undefined || answer === null) return '';
  if (answer === NOT_SURE) return NOT_SURE;
  switch (question.kind) {
    case 'text': return typeof answer === 'string' ? answer : '';
    case 'choice': return question.options.find((option) => option.id === answer)?.label ?? '';
    case 'number': return question.fields.flatMap((field) => figureWords(field, answer)).join('; ');
    case 'multi':
    case 'ticks': return question.options.flatMap((option) => lineWords(option, answer, notSureTicks)).join('; ');
  }
}

function figureWords(field: NumberField, answer: Answer): readonly string[] {
  const value = typeof answer === 'object' && !Array.isArray(answer) ? (answer as Readonly<Record<string, unknown>>)[field.input] : undefined;
  if (typeof value !== 'number') return [];
  return [`${field.label}: ${valueWords(field, value)}`];
}

function valueWords(field: NumberField, value: number): string {
  if (field.entry === 'minutes and seconds') return durationWords(value);
  if (field.entry === 'of ten') return `${exact(Number((value * 10).toPrecision(3)))} of ten`;
  return ['', '-', 'share', '0 or 1'].includes(field.unit) ? exact(value) : `${exact(value)} ${field.unit}`;
}

function lineWords(option: { readonly id: string; readonly label: string }, answer: Answer, notSureTicks: readonly string[]): readonly string[] {
  const said = notSureTicks.includes(option.id) ? NOT_SURE : Array.isArray(answer) ? (answer.includes(option.id) ? 'yes' : 'no') : (answer as Readonly<Record<string, unknown>>)[option.id];
  return typeof said === 'string' ? [`${option.label}: ${said}`] : [];
}

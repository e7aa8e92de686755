import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { NOT_SURE } from './answer-fault';
import { answerField, noneField, openTicksField, partField } from './field-names';
import { askedFields } from './number-boxes';
import { typedFrom } from './number-form';
import { linesSaid } from './ticks';

/** What stands in the fields of a form, by name; several values where a name stands more than once. */
export type FormValues = Readonly<Record<string, string | readonly string[]>>;

/**
 * What the fields of a question hold for an answer as it stands: the way back of `answerFromForm`. A list of an
 * earlier edition becomes lines, and an option or a figure that is no longer offered has no field.
 */
export function formValues(question: Question, answer: Answer | undefined, notSureTicks: readonly string[] = []): FormValues {
  const own = answerField(question.id);
  if (question.kind === 'ticks') return named(question.id, linesSaid(question, answer, notSureTicks));
  if (answer === NOT_SURE) return { [own]: NOT_SURE };
  if (question.kind === 'number') return named(question.id, typedFrom(askedFields(question.fields), answer));
  if (typeof answer === 'string') return { [own]: answer };
  if (question.kind !== 'multi' || !Array.isArray(answer)) return {};
  const none = answer.length === 0 && notSureTicks.length === 0;
  return { [own]: answer, [openTicksField(question.id)]: notSureTicks, ...(none ? { [noneField(question.id)]: 'yes' } : {}) };
}

function named(question: string, parts: Readonly<Record<string, string>>): FormValues {
  return Object.fromEntries(Object.entries(parts).map(([part, value]) => [partField(question, part), value]));
}

import type { Question } from '@/lib/content/model';
import { controlsOf } from '@/lib/core/answers/resolve-states';
import { partOf, type WholeDocument } from '../_state/whole-document';
import { inputsSetBy } from '@/lib/content/question-sets';

/** Something the document states itself; it wins over the answer it belongs to. */
export interface Override { readonly part: 'states' | 'inputs'; readonly id: string; readonly value: string }

/** What the document writes over this question's answer. */
export function overridesOf(question: Question, whole: WholeDocument): readonly Override[] {
  const found = (part: Override['part'], ids: readonly string[]): readonly Override[] => {
    const written = partOf(whole, part);
    return ids.flatMap((id) => (Object.hasOwn(written, id) ? [{ part, id, value: inWords(written[id]) }] : []));
  };
  return [...found('states', controlsOf(question)), ...found('inputs', inputsSetBy(question))];
}

/** The document without something it stated itself, so that the answer counts again. */
export function withoutOverride(whole: WholeDocument, { part, id }: Override): WholeDocument {
  return { ...whole, [part]: Object.fromEntries(Object.entries(partOf(whole, part)).filter(([key]) => key !== id)) };
}

/** A state may come with the reason for it. */
function inWords(value: unknown): string {
  if (typeof value !== 'object' || value === null || !('state' in value)) return String(value);
  const reason = 'reason' in value && typeof value.reason === 'string' ? ` (${value.reason})` : '';
  return `${String(value.state)}${reason}`;
}

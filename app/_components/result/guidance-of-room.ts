import { type FilledGuidance, fillGuidance, guidanceWords } from '@/lib/content/fill-guidance';
import { guidance2 } from '@/lib/content/guidance-2';
import type { GuidanceFieldId } from '@/lib/content/model';
import { guidanceTogether } from '@/lib/content/guidance-together';
import type { Content } from '@/lib/content/model';
import type { DocumentParts } from './document-parts';

/**
 * Guidance texts that stand together on the page, with this room's number and places in them where they are
 * given. The first edition has none of its own and takes those of the second.
 */
export function guidanceOfRoom(content: Content, parts: DocumentParts, ids: readonly string[]): readonly FilledGuidance[] {
  const guidance = content.guidance ?? guidance2;
  const values: Partial<Record<GuidanceFieldId, string>> = {};
  for (const { id, input } of guidance.fields) {
    const value = input === null ? undefined : textOfInput(content, parts, input);
    if (value !== undefined) values[id] = value;
  }
  const words = guidanceWords(guidance.fields, values);
  return guidanceTogether(guidance, ids).map((text) => fillGuidance(text, words));
}

/** What the document states itself wins over the answer, as in the calculation. */
function textOfInput(content: Content, parts: DocumentParts, input: string): string | undefined {
  const written = parts.inputs?.[input];
  if (typeof written === 'string') return written;
  const question = content.questions.find((one) => one.kind === 'text' && one.field.input === input);
  const answer = question === undefined ? undefined : parts.answers[question.id];
  return typeof answer === 'string' && answer !== 'not sure' ? answer : undefined;
}

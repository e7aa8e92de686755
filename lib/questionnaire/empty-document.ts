import type { Content } from '@/lib/content/model';
import type { AssessmentDocument } from '@/lib/core/document';

/**
 * An assessment in which nothing is answered yet, tied to the edition it was begun with.
 * @param about id and title, chosen by the caller: nothing here is random or looks at a clock
 */
export function emptyDocument(content: Content, about: { readonly id: string; readonly title: string }): AssessmentDocument {
  return { id: about.id, title: about.title, contentVersion: content.version, answers: {} };
}

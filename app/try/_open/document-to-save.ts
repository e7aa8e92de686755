import { currentContent } from '@/lib/content/editions';
import type { OpenDocument } from '../_state/page-state';
import type { WholeDocument } from '../_state/whole-document';

/**
 * The document as it is saved. What was changed here was answered to the questions of the edition in force, and
 * says so; what was not changed comes out as it came in.
 */
export function documentToSave({ whole, edited }: OpenDocument): WholeDocument {
  return edited ? { ...whole, contentVersion: currentContent.version } : whole;
}

import 'server-only';
import { createHash } from 'node:crypto';
import type { AssessmentDocument } from '@/lib/core/document';
import type { ScoreResult } from '@/lib/core/result';
import { resultOfPaper } from '@/lib/db/documents/read-document';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { contentOf, editionOf, type Scored } from './score-version';

/**
 * The result that the paper of a version rests on, as it was kept with it; null when none was made. It was written by
 * this program as a whole, so its hash is what shows that it is the same.
 * @throws when it is no longer what was written
 */
export async function keptResult(actor: Actor, versionId: string): Promise<Scored | null> {
  const kept = await resultOfPaper(database(), schoolScope(actor), versionId);
  if (kept === null) return null;
  if (createHash('sha256').update(kept.resultJson, 'utf8').digest('hex') !== kept.resultHash) throw new Error(`the kept result of version ${versionId} was altered`);
  const content = contentOf(kept.contentVersion);
  return { content, edition: editionOf(content), document: JSON.parse(kept.inputJson) as AssessmentDocument, result: JSON.parse(kept.resultJson) as ScoreResult };
}

import { z } from 'zod';
import { AnswerValueSchema } from '@/lib/assessments/version';
import type { Answer } from '@/lib/core/document';
import type { Db } from '../client';
import type { SchoolScope } from '../scope';

const SavedSchema = z.object({ questionId: z.string(), from: AnswerValueSchema.nullable() });

/** What stood there before somebody's last saving of a version: the answers that it changed, null where there was none. */
export interface LastSave { readonly at: Date; readonly before: Readonly<Record<string, Answer | null>> }

/** A page has fewer questions than this. */
const MOST_OF_ONE_PAGE = 100;

/** Reads out of the log what somebody's last saving changed; null when this person has saved nothing in this version. */
export async function lastSave(db: Db, scope: SchoolScope, versionId: string, personId: string): Promise<LastSave | null> {
  const entries = await db.auditEntry.findMany({
    where: { ...scope, subjectId: versionId, kind: 'answer.saved', actorId: personId },
    orderBy: { sequence: 'desc' }, take: MOST_OF_ONE_PAGE, select: { at: true, dataJson: true },
  });
  const [latest] = entries;
  if (latest === undefined) return null;
  const together = entries.filter(({ at }) => at.getTime() === latest.at.getTime()).map(({ dataJson }) => SavedSchema.parse(JSON.parse(dataJson)));
  return { at: latest.at, before: Object.fromEntries(together.map(({ questionId, from }) => [questionId, from])) };
}

import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import { runInTransaction } from '../transaction';
import type { Author } from './begin-assessment';

/** Which revision of each answer somebody has looked at, by question. */
export async function listLooks(db: Db, scope: SchoolScope, versionId: string, byId: string): Promise<ReadonlyMap<string, number>> {
  const rows = await db.answerLook.findMany({ where: { ...scope, versionId, byId }, select: { questionId: true, answerRevision: true } });
  return new Map(rows.map(({ questionId, answerRevision }) => [questionId, answerRevision]));
}

/**
 * Notes that somebody has looked at these answers as they are now. It is a note for themselves, to find on: nothing is
 * decided by it, so it does not stand in the log.
 */
export async function lookAt(db: Db, by: Author, at: Date, versionId: string, questionIds: readonly string[]): Promise<void> {
  const scope = schoolScope(by);
  await runInTransaction(db, async (tx) => {
    const answers = await tx.answer.findMany({ where: { ...scope, versionId, questionId: { in: [...questionIds] } }, select: { questionId: true, revision: true } });
    for (const { questionId, revision } of answers) {
      const key = { versionId, questionId, byId: by.personId };
      await tx.answerLook.upsert({ where: { versionId_questionId_byId: key, ...scope }, create: { ...scope, ...key, answerRevision: revision, at }, update: { answerRevision: revision, at } });
    }
  });
}

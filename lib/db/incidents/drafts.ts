import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope } from '../scope';

/** Keeps what somebody has typed, in place of their draft before. A draft is no record, so it is not in the log. */
export async function keepDraft(db: Db, by: Member, at: Date, typedJson: string): Promise<void> {
  const scope = schoolScope(by);
  const row = { typedJson, savedAt: at };
  await db.incidentDraft.upsert({ where: { schoolId_personId: { ...scope, personId: by.personId } }, create: { ...scope, personId: by.personId, ...row }, update: row });
}

/** The draft of one person, or null. Nobody sees that of another. */
export async function findDraft(db: Db, by: Member): Promise<{ readonly typedJson: string; readonly savedAt: Date } | null> {
  return db.incidentDraft.findUnique({ where: { schoolId_personId: { ...schoolScope(by), personId: by.personId } }, select: { typedJson: true, savedAt: true } });
}

export async function dropDraft(db: Db, by: Member): Promise<void> {
  await db.incidentDraft.deleteMany({ where: { ...schoolScope(by), personId: by.personId } });
}

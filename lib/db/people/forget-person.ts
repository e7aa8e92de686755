import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { endSessions } from './accounts';
import type { Member } from './find-member';

/** What stands where the name of somebody stood who asked to be forgotten. */
export const REMOVED_PERSON = 'removed person';

/**
 * Takes away who somebody was that left: name, telephone, address, what they signed in with, and the copies of their name
 * beside their everyday work. Not touched: the log, whose entries hold each other, and what was signed, which is evidence.
 * @returns why not, in words, or null when it is done
 */
export async function forgetPerson(db: Db, by: Member, at: Date, personId: string): Promise<string | null> {
  const scope = schoolScope(by);
  return recordChange<string | null>(db, by, at, async (tx) => {
    const membership = await tx.membership.findUnique({ where: { schoolId_personId: { ...scope, personId } }, select: { endedAt: true, person: { select: { userId: true, removedAt: true } } } });
    if (membership === null || membership.person.removedAt !== null) return refuse('This person does not belong to your school');
    if (membership.endedAt === null) return refuse('Close the account first: somebody who works here cannot be forgotten');
    if ((await tx.membership.count({ where: { personId, schoolId: { not: by.schoolId } } })) > 0) return refuse('This person belongs to another school too, so what they are called is not yours alone to remove');
    await removeAccount(tx, membership.person.userId, at);
    await tx.person.update({ where: { id: personId }, data: { name: REMOVED_PERSON, phone: null, removedAt: at } });
    await tx.membership.update({ where: { schoolId_personId: { ...scope, personId } }, data: { employer: null } });
    await renameCopies(tx, scope, personId);
    const events: AuditEvent[] = [{ kind: 'person.forgotten', subjectId: personId, data: {} }];
    return { value: null, events };
  });
}

/** The row of the account stays, since the person's refers to it; nobody can sign in by it. */
async function removeAccount(tx: Tx, userId: string, at: Date): Promise<void> {
  await endSessions(tx, userId, null);
  await tx.signInMethod.deleteMany({ where: { userId } });
  await tx.user.update({ where: { id: userId }, data: { name: REMOVED_PERSON, email: `${userId}@removed.invalid`, image: null, updatedAt: at } });
}

async function renameCopies(tx: Tx, scope: SchoolScope, personId: string): Promise<void> {
  const [where, data] = [{ ...scope, byId: personId }, { byName: REMOVED_PERSON }];
  await tx.packStateChange.updateMany({ where, data });
  await tx.packCheck.updateMany({ where, data });
  await tx.handOver.updateMany({ where, data });
  await tx.session.updateMany({ where, data });
  await tx.storedFile.updateMany({ where, data });
  await tx.answerEvidence.updateMany({ where, data });
  await tx.comment.updateMany({ where, data });
  await tx.incident.updateMany({ where, data });
  await tx.incidentCorrection.updateMany({ where, data });
  await tx.incidentFollowUp.updateMany({ where, data });
  await tx.answer.updateMany({ where: { ...scope, answeredById: personId }, data: { answeredByName: REMOVED_PERSON } });
  await tx.action.updateMany({ where: { ...scope, ownerId: personId }, data: { ownerName: REMOVED_PERSON } });
  await tx.incidentDraft.deleteMany({ where: { ...scope, personId } });
}

function refuse(reason: string): { readonly value: string; readonly events: readonly AuditEvent[] } {
  return { value: reason, events: [] };
}

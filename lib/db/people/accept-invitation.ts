import type { AcceptInput } from '@/lib/people/invitation';
import type { AuditEvent } from '@/lib/audit/event';
import { appendAudit } from '../audit/append-audit';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { runInTransaction, type Tx } from '../transaction';
import { createPerson, isEmailTaken } from './accounts';
import type { Invitation } from './invitations';

/** `gone`: used, taken back or too old by now. `email-taken`: somebody signs in with this address already. */
export type Accepted = 'joined' | 'gone' | 'email-taken';

/** Makes the account and the membership a link is for, and uses the link up: all of it or nothing. Of two at once one joins. */
export async function writeAcceptance(db: Db, invitation: Invitation, input: AcceptInput, passwordHash: string, at: Date): Promise<Accepted> {
  const { name, post, email } = input;
  return runInTransaction(db, async (tx) => {
    if (await isEmailTaken(tx, email)) return 'email-taken';
    if (!(await useUp(tx, invitation, at))) return 'gone';
    const personId = await createPerson(tx, { name, email, passwordHash, at });
    const joined = await enter(tx, invitation, { personId, name, post }, at);
    await appendAudit(tx, { schoolId: invitation.schoolId, personId, name }, at, [joined]);
    return 'joined';
  });
}

interface Joining { readonly personId: string; readonly name: string; readonly post: string }

/** `member`: works there already. `closed`: worked there until an officer closed their account, which a link does not undo. */
export type Joined = 'joined' | 'gone' | 'member' | 'closed';

/** Makes somebody who has an account a member of the school a link is of, and uses the link up. Refused, nothing is changed. */
export function writeJoining(db: Db, invitation: Invitation, person: Joining, at: Date): Promise<Joined> {
  const { schoolId } = invitation;
  const { personId, name } = person;
  return recordChange<Joined>(db, { schoolId, personId, name }, at, async (tx) => {
    const before = await tx.membership.findUnique({ where: { schoolId_personId: { schoolId, personId } }, select: { endedAt: true } });
    if (before !== null) return { value: before.endedAt === null ? 'member' : 'closed', events: [] };
    if (!(await useUp(tx, invitation, at))) return { value: 'gone', events: [] };
    return { value: 'joined', events: [await enter(tx, invitation, person, at)] };
  });
}

/** Uses a link up when it still works; of two at once one does. */
async function useUp(tx: Tx, { id }: Invitation, at: Date): Promise<boolean> {
  const { count } = await tx.invitation.updateMany({ where: { id, usedAt: null, revokedAt: null, expiresAt: { gt: at } }, data: { usedAt: at } });
  return count === 1;
}

async function enter(tx: Tx, { id, schoolId, role }: Invitation, { personId, name, post }: Joining, at: Date): Promise<AuditEvent> {
  await tx.membership.create({ data: { schoolId, personId, role, post, joinedAt: at } });
  await tx.invitation.update({ where: { id }, data: { usedById: personId } });
  return { kind: 'person.joined', subjectId: personId, data: { name, role, invitationId: id } };
}

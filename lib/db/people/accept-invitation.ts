import type { AcceptInput } from '@/lib/people/invitation';
import { appendAudit } from '../audit/append-audit';
import type { Db } from '../client';
import { runInTransaction } from '../transaction';
import { createPerson, isEmailTaken } from './accounts';
import type { Invitation } from './invitations';

/** `gone`: used, taken back or too old by now. `email-taken`: somebody signs in with this address already. */
export type Accepted = 'joined' | 'gone' | 'email-taken';

/** Makes the account and the membership a link is for, and uses the link up: all of it or nothing. Of two at once one joins. */
export async function writeAcceptance(db: Db, { id, schoolId, role }: Invitation, input: AcceptInput, passwordHash: string, at: Date): Promise<Accepted> {
  const { name, post, email } = input;
  return runInTransaction(db, async (tx) => {
    if (await isEmailTaken(tx, email)) return 'email-taken';
    const used = await tx.invitation.updateMany({ where: { id, usedAt: null, revokedAt: null, expiresAt: { gt: at } }, data: { usedAt: at } });
    if (used.count !== 1) return 'gone';
    const personId = await createPerson(tx, { name, email, passwordHash, at });
    await tx.membership.create({ data: { schoolId, personId, role, post, joinedAt: at } });
    await tx.invitation.update({ where: { id }, data: { usedById: personId } });
    await appendAudit(tx, { schoolId, personId, name }, at, [{ kind: 'person.joined', subjectId: personId, data: { name, role, invitationId: id } }]);
    return 'joined';
  });
}

import { randomUUID } from 'node:crypto';
import { isRole, type Role } from '@/lib/access/roles';
import { invitationEnd, judgeInvitation, type InvitationState, type InviteInput } from '@/lib/people/invitation';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import type { Member } from './find-member';

export interface Invitation extends InvitationState {
  readonly id: string;
  readonly schoolId: string;
  readonly role: Role;
  readonly forWhom: string;
  readonly email: string | null;
}

const FIELDS = { id: true, schoolId: true, role: true, forWhom: true, email: true, expiresAt: true, usedAt: true, revokedAt: true } as const;

/** Makes a link's row. Of its secret only the seal is kept. */
export async function addInvitation(db: Db, by: Member, at: Date, input: InviteInput, sealOfToken: (id: string) => string): Promise<void> {
  const id = randomUUID();
  const expiresAt = invitationEnd(at);
  await recordChange(db, by, at, async (tx) => {
    await tx.invitation.create({ data: { ...schoolScope(by), ...input, id, tokenSeal: sealOfToken(id), byId: by.personId, createdAt: at, expiresAt } });
    const data = { role: input.role, forWhom: input.forWhom, expiresAt: expiresAt.toISOString() };
    return { value: undefined, events: [{ kind: 'invitation.made', subjectId: id, data }] };
  });
}

/** Returns the links of a school that can still be used, the latest first. */
export async function listOpenInvitations(db: Db, scope: SchoolScope, now: Date): Promise<readonly Invitation[]> {
  const rows = await db.invitation.findMany({
    where: { ...scope, usedAt: null, revokedAt: null, expiresAt: { gt: now } },
    orderBy: [{ createdAt: 'desc' }, { id: 'asc' }],
    select: FIELDS,
  });
  return rows.map(knownInvitation);
}

/** Takes a link back; returns why not, in words, or null. */
export async function revokeInvitation(db: Db, by: Member, at: Date, invitationId: string): Promise<string | null> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx) => {
    const invitation = await tx.invitation.findFirst({ where: { ...scope, id: invitationId }, select: FIELDS });
    const verdict = judgeInvitation(invitation, at);
    if (!verdict.ok) return { value: verdict.reason, events: [] };
    await tx.invitation.updateMany({ where: { ...scope, id: invitationId, usedAt: null }, data: { revokedAt: at, revokedById: by.personId } });
    return { value: null, events: [{ kind: 'invitation.revoked', subjectId: invitationId, data: {} }] };
  });
}

/** Returns the invitation of a link by the seal of its secret, or null. Whoever holds the link is of no school yet. */
export async function findInvitation(db: Pick<Tx, 'invitation'>, tokenSeal: string): Promise<Invitation | null> {
  const row = await db.invitation.findUnique({ where: { tokenSeal }, select: FIELDS });
  return row ? knownInvitation(row) : null;
}

function knownInvitation<Row extends { readonly role: string }>(row: Row): Row & { readonly role: Role } {
  const { role } = row;
  if (!isRole(role)) throw new Error(`Unknown role ${role} in the database`);
  return { ...row, role };
}

import 'server-only';
import { ROLE_NAMES, type Role } from '@/lib/access/roles';
import { changeMember } from '@/lib/db/people/members';
import type { MemberChange } from '@/lib/people/decide-member';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

/** Gives somebody of the school another role. It counts from their next page on. */
export function changeRole(actor: Actor, { personId, role }: { readonly personId: string; readonly role: Role }): Promise<Outcome> {
  return change(actor, { kind: 'role', personId, role }, 'role', `Changed. They are ${ROLE_NAMES[role]} from now on.`);
}

/** Ends somebody's membership and their sessions. What they did stays. */
export function closeAccount(actor: Actor, { personId }: { readonly personId: string }): Promise<Outcome> {
  return change(actor, { kind: 'close', personId }, null, 'Closed. They are signed out.');
}

/** Takes the closing of an account back. */
export function reopenAccount(actor: Actor, { personId }: { readonly personId: string }): Promise<Outcome> {
  return change(actor, { kind: 'reopen', personId }, null, 'Opened. They can sign in again.');
}

async function change(actor: Actor, wanted: MemberChange, field: string | null, done: string): Promise<Outcome> {
  const reason = await changeMember(database(), actor, new Date(), wanted);
  return reason === null ? { ok: true, done } : refused(field, reason);
}

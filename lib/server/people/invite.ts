import 'server-only';
import { addInvitation, revokeInvitation as revoke } from '@/lib/db/people/invitations';
import type { InviteInput } from '@/lib/people/invitation';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { sealOfToken, tokenOf } from './invitation-token';

/** Makes a link by which one person joins the school in one role. */
export async function invite(actor: Actor, input: InviteInput): Promise<Outcome> {
  await addInvitation(database(), actor, new Date(), input, (id) => sealOfToken(tokenOf(id)));
  return { ok: true, done: `Made. The link for ${input.forWhom} stands above, under the links that are still open: copy it and pass it on.` };
}

/** Makes a link useless that was not used yet. */
export async function revokeInvitation(actor: Actor, { invitationId }: { readonly invitationId: string }): Promise<Outcome> {
  const reason = await revoke(database(), actor, new Date(), invitationId);
  return reason === null ? { ok: true, done: 'Taken back. The link no longer works.' } : refused(null, reason);
}

import 'server-only';
import { forgetPerson as forget } from '@/lib/db/people/forget-person';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

/** Takes away who somebody was that left. */
export async function forgetPerson(actor: Actor, { personId }: { readonly personId: string }): Promise<Outcome> {
  const reason = await forget(database(), actor, new Date(), personId);
  return reason === null ? { ok: true, then: '/people' } : refused(null, reason);
}

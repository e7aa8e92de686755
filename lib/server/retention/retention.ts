import 'server-only';
import { getRetention, writeRetention } from '@/lib/db/retention/retention-rules';
import { schoolScope } from '@/lib/db/scope';
import type { Retention, RetentionChange } from '@/lib/people/retention';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

/** How long the actor's school keeps what names or shows people. */
export function retentionOf(actor: Actor): Promise<Retention> {
  return getRetention(database(), schoolScope(actor));
}

export async function changeRetention(actor: Actor, { revision, ...kept }: RetentionChange): Promise<Outcome> {
  const written = await writeRetention(database(), actor, new Date(), kept, revision);
  return written ? { ok: true, done: 'Saved. What is older goes within a day.' } : refused(null, 'Somebody else changed the school since you opened this page. Open it again in another window, compare, and save there');
}

import 'server-only';
import { changeSchool as write } from '@/lib/db/people/school-record';
import type { SchoolChange } from '@/lib/people/school-fields';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

/** Saves what the school says about itself, unless somebody else saved since the form was opened. */
export async function changeSchool(actor: Actor, { revision, ...fields }: SchoolChange): Promise<Outcome> {
  const written = await write(database(), actor, new Date(), fields, revision);
  return written ? { ok: true, done: 'Saved.' } : refused(null, 'Somebody else changed the school since you opened this page. Open it again in another window, compare, and save there');
}

import 'server-only';
import { writeSchoolRules } from '@/lib/db/people/school-rules';
import { adjustableLimits } from '@/lib/packs/school-rules';
import { readRulesPost, type RulesPost } from '@/lib/packs/school-rules-input';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { PACK_LIMITS, schoolRulesOf } from '../packs/pack-limits';

/** Saves the school's own limits, unless somebody else changed the school since the form was opened. */
export async function changeRules(actor: Actor, post: RulesPost): Promise<Outcome> {
  const read = readRulesPost(post, adjustableLimits(PACK_LIMITS), await schoolRulesOf(actor));
  if (!read.ok) return read;
  const written = await writeSchoolRules(database(), actor, new Date(), read.rules, post.revision);
  return written ? { ok: true, done: 'Saved. Checks from now on are held to it.' } : refused(null, 'Somebody else changed the school since you opened this page. Open it again in another window, compare, and save there');
}

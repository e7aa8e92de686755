import 'server-only';
import { listSites } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';

/** An area where a pack may be kept, as it is offered in a list. */
export interface AreaChoice { readonly id: string; readonly name: string }

/** Areas where packs lie: a pack is not kept in the arena. */
const KEPT_IN: readonly string[] = ['storage', 'charging', 'isolation', 'disposal'];

/** Returns the areas of the school's sites where packs may be kept, with the name of the site. */
export async function areaChoices(actor: Actor): Promise<readonly AreaChoice[]> {
  const sites = await listSites(database(), schoolScope(actor));
  return sites.flatMap((site) => site.areas.filter(({ use }) => KEPT_IN.includes(use)).map((area) => ({ id: area.id, name: `${site.name}, ${area.name}` })));
}

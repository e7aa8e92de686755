import 'server-only';
import type { RegisterFact } from '@/lib/assessments/register-facts';
import type { Content } from '@/lib/content/model';
import { readPutAside } from '@/lib/db/packs/read-put-aside';
import { listPacks } from '@/lib/db/packs/read-packs';
import { findSite } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import type { Pack } from '@/lib/packs/pack';
import type { ListedPack } from '@/lib/packs/pack-list';
import { packFigures } from '@/lib/packs/pack-figures';
import { factsOf } from '@/lib/places/facts-of';
import type { PackForFacts } from '@/lib/places/facts-of-packs';
import { currentContent } from '@/lib/content/editions';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';

/** What the school's registers of places and packs say, as answers to the questions of an edition. */
export async function registerFacts(actor: Actor, content: Content, siteId: string): Promise<readonly RegisterFact[]> {
  const [db, scope] = [database(), schoolScope(actor)];
  const [school, site, packs, putAside] = await Promise.all([currentSchool(actor), findSite(db, scope, siteId), listPacks(db, scope), readPutAside(db, scope, new Date())]);
  return site === null ? [] : factsOf(content, { school, site, packs: packs.map(packForFacts), putAside });
}

/** Energy of a pack as its label gives it, Wh; null where none can be told. */
export function energyOf(pack: Pack): number | null {
  const cell = cellTypeFacts(currentContent.packLimits).find(({ id }) => id === pack.cellType);
  return cell === undefined ? pack.printedWh : packFigures(pack, cell).energyWh;
}

function packForFacts({ pack }: ListedPack): PackForFacts {
  const { series, parallel, capacityMah, printedWh, cellType, secondHand, areaId } = pack;
  const energyWh = energyOf(pack);
  return { serves: pack.state === 'in-use' || pack.state === 'watch', series, parallel, capacityMah, printedWh, energyWh, cellType, secondHand, areaId };
}

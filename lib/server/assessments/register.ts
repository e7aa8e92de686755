import 'server-only';
import type { RegisterFact } from '@/lib/assessments/register-facts';
import type { Content } from '@/lib/content/model';
import { readPutAside } from '@/lib/db/packs/read-put-aside';
import { listPacks } from '@/lib/db/packs/read-packs';
import { findSite } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import { cellTypeFacts } from '@/lib/packs/cell-types';
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

function packForFacts({ pack }: ListedPack): PackForFacts {
  const { series, parallel, capacityMah, printedWh, cellType, secondHand, areaId } = pack;
  const cell = cellTypeFacts(currentContent.packLimits).find(({ id }) => id === cellType);
  const energyWh = cell === undefined ? printedWh : packFigures(pack, cell).energyWh;
  return { serves: pack.state === 'in-use' || pack.state === 'watch', series, parallel, capacityMah, printedWh, energyWh, cellType, secondHand, areaId };
}

import 'server-only';
import { listPacks } from '@/lib/db/packs/read-packs';
import { putAsideSince } from '@/lib/db/packs/put-aside';
import { schoolScope } from '@/lib/db/scope';
import { cellTypeFacts, type CellTypeFacts } from '@/lib/packs/cell-types';
import type { Pack } from '@/lib/packs/pack';
import { packFigures } from '@/lib/packs/pack-figures';
import type { RecordForFacts } from '@/lib/places/facts-of';
import type { PackForFacts, PutAside } from '@/lib/places/facts-of-packs';
import type { Actor } from '../actor';
import { database } from '../database';
import { PACK_LIMITS } from '../packs/pack-limits';
import { currentSchool } from '../people/current-school';
import { findSite } from './read-places';

const MS_A_DAY = 86_400_000;
const A_YEAR_MS = 365 * MS_A_DAY;

/** Returns what the school has written down about a site and its packs, for `factsOf`; null when there is no such site. */
export async function recordForFacts(actor: Actor, siteId: string, now: Date): Promise<RecordForFacts | null> {
  const [school, site, packs, putAside] = await Promise.all([currentSchool(actor), findSite(actor, siteId), packsForFacts(actor), putAsideNow(actor, now)]);
  return site === null ? null : { school, site, packs, putAside };
}

async function packsForFacts(actor: Actor): Promise<readonly PackForFacts[]> {
  const types = new Map(cellTypeFacts(PACK_LIMITS).map((type) => [type.id, type]));
  return (await listPacks(database(), schoolScope(actor))).map(({ pack }) => packForFacts(pack, types.get(pack.cellType)));
}

function packForFacts(pack: Pack, type: CellTypeFacts | undefined): PackForFacts {
  const { series, parallel, capacityMah, printedWh, cellType, secondHand, areaId, state } = pack;
  const energyWh = type === undefined ? printedWh : packFigures(pack, type).energyWh;
  return { serves: state === 'in-use' || state === 'watch', series, parallel, capacityMah, printedWh, energyWh, cellType, secondHand, areaId };
}

async function putAsideNow(actor: Actor, now: Date): Promise<PutAside> {
  const { firstEntered, isolated, handedOver, lastWait } = await putAsideSince(database(), schoolScope(actor), new Date(now.getTime() - A_YEAR_MS));
  const days = (from: Date, to: Date): number => Math.floor((to.getTime() - from.getTime()) / MS_A_DAY);
  return { registerDays: firstEntered === null ? 0 : days(firstEntered, now), isolated, handedOver, lastWaitDays: lastWait === null ? null : days(lastWait.from, lastWait.to) };
}

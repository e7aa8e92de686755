import { changePack, type PackCommand } from '@/lib/packs/change-pack';
import { refusedFor } from '@/lib/packs/decided';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope } from '../scope';
import { sitesOfAreas } from './add-packs';
import { takenLabels } from './read-packs';
import { detailColumns } from './rows';
import { decideOnPack, updatePack, type Written } from './write-pack';

/** Changes what the register says of a pack, when nobody changed it since the revision of the command. */
export async function changePackDetails(db: Db, by: Member, at: Date, packId: string, command: PackCommand): Promise<Written> {
  const scope = schoolScope(by);
  return decideOnPack(db, by, at, packId, async ({ pack }, tx) => {
    const decided = changePack(pack, command, await takenLabels(tx, scope, packId));
    if (!decided.ok) return decided;
    const { areaId } = decided.change;
    const siteId = areaId === null ? null : (await sitesOfAreas(tx, scope, [{ areaId }])).get(areaId);
    return siteId === undefined ? refusedFor('areaId', 'Choose one of your areas') : { ...decided, change: { details: decided.change, siteId } };
  }, async (writing, pack, { details, siteId }) => updatePack(writing, pack, { ...detailColumns(details), siteId }));
}

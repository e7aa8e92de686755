import { checkInForce } from '@/lib/packs/checks/check-age';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { blockedUses } from '@/lib/packs/states/blocked-uses';
import type { PackToLog } from '@/lib/sessions/log-packs';
import { listPacks } from '../packs/read-packs';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

const BY_LABEL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** The packs a session may name, by label, with what stands against charging each. Those handed over are gone. */
export async function packsToLog(db: Pick<Tx, 'pack'>, scope: SchoolScope, limits: SchoolPackLimits, now: Date): Promise<readonly PackToLog[]> {
  const listed = await listPacks(db, scope);
  return listed.filter(({ pack }) => pack.state !== 'handed-over').sort((a, b) => BY_LABEL.compare(a.pack.label, b.pack.label)).map(({ pack, lastCheck }): PackToLog => {
    const { uses, why } = blockedUses(limits, pack, checkInForce(limits, lastCheck, now));
    return { id: pack.id, label: pack.label, notToCharge: uses.includes('charge') ? why : null };
  });
}

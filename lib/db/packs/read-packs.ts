import type { PackHistory } from '@/lib/packs/pack-history';
import { isolationOf, placeOfIsolated } from '@/lib/packs/pack-history';
import type { ListedPack } from '@/lib/packs/pack-list';
import { rowOf, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { changeOfRow, checkOfRow, NEWEST_FIRST, packOfRow } from './rows';

type Reader = Pick<Tx, 'pack' | 'sessionPack'>;

/** Every pack of a school with its last check and, when isolated, where it is. In no order. */
export async function listPacks(db: Pick<Tx, 'pack'>, scope: SchoolScope): Promise<readonly ListedPack[]> {
  const rows = await db.pack.findMany({
    where: scope,
    include: { checks: { orderBy: [...NEWEST_FIRST], take: 1 }, stateChanges: { where: { toState: 'isolated' }, orderBy: [...NEWEST_FIRST] } },
  });
  return rows.map(({ checks: [last], stateChanges, ...row }) => {
    const history = { pack: packOfRow(row), changes: stateChanges.map(changeOfRow) };
    return { pack: history.pack, lastCheck: last === undefined ? null : checkOfRow(last), isolatedAt: placeOfIsolated(history)?.placeNow ?? null, isolatedSince: isolationOf(history)?.since ?? null };
  });
}

/** A pack with all its checks and changes, or null when the school has none of this id. */
export async function packHistory(db: Reader, scope: SchoolScope, packId: string): Promise<PackHistory | null> {
  const row = await db.pack.findUnique({
    where: rowOf(scope, packId),
    include: { checks: { orderBy: [...NEWEST_FIRST] }, stateChanges: { orderBy: [...NEWEST_FIRST] } },
  });
  if (row === null) return null;
  const { checks, stateChanges, ...columns } = row;
  const pack = packOfRow(columns);
  const logged = await db.sessionPack.aggregate({ where: { ...scope, packId }, _sum: { charges: true } });
  const charges = pack.chargesBefore === null ? null : pack.chargesBefore + (logged._sum.charges ?? 0);
  return { pack, checks: checks.map(checkOfRow), changes: stateChanges.map(changeOfRow), charges };
}

/** Labels of every pack a school ever had: a label is never given twice. @param except a pack whose own label is left out */
export async function takenLabels(db: Pick<Tx, 'pack'>, scope: SchoolScope, except?: string): Promise<readonly string[]> {
  const rows = await db.pack.findMany({ where: { ...scope, ...(except === undefined ? {} : { id: { not: except } }) }, select: { label: true } });
  return rows.map(({ label }) => label);
}

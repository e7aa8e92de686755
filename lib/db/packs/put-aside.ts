import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** What left service since a moment, and how long the register is kept. */
export interface PutAsideRows {
  /** when the first pack was entered; null while there is none */
  readonly firstEntered: Date | null;
  readonly isolated: number;
  readonly handedOver: number;
  /** the one handed over last: when it was isolated or retired, and when it left */
  readonly lastWait: { readonly from: Date; readonly to: Date } | null;
}

/** Counts packs put aside and handed over since a moment, each time a pack was. */
export async function putAsideSince(db: Pick<Tx, 'pack' | 'packStateChange'>, scope: SchoolScope, since: Date): Promise<PutAsideRows> {
  const first = await db.pack.findFirst({ where: scope, orderBy: { createdAt: 'asc' }, select: { createdAt: true } });
  const isolated = await db.packStateChange.count({ where: { ...scope, toState: 'isolated', at: { gte: since }, NOT: { fromState: 'isolated' } } });
  const handedOver = await db.packStateChange.count({ where: { ...scope, toState: 'handed-over', at: { gte: since } } });
  return { firstEntered: first?.createdAt ?? null, isolated, handedOver, lastWait: await lastWait(db, scope) };
}

async function lastWait(db: Pick<Tx, 'packStateChange'>, scope: SchoolScope): Promise<PutAsideRows['lastWait']> {
  const left = await db.packStateChange.findFirst({ where: { ...scope, toState: 'handed-over' }, orderBy: { at: 'desc' } });
  if (left === null) return null;
  const aside = await db.packStateChange.findFirst({ where: { ...scope, packId: left.packId, toState: left.fromState ?? 'isolated', NOT: { fromState: left.fromState } }, orderBy: { at: 'desc' } });
  return aside === null ? null : { from: aside.at, to: left.at };
}

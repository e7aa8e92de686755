import { DAY_MS } from '@/lib/units/time';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

const YEAR_DAYS = 365;

/** Packs that left service in the last twelve months. */
export interface PutAsideInYear {
  /** days since the first pack was entered; 0 while there is none */
  readonly registerDays: number;
  readonly isolated: number;
  readonly handedOver: number;
  /** days the one handed over last had waited; null when none was */
  readonly lastWaitDays: number | null;
}

/** Counts the packs that were isolated, and handed over, in the twelve months before `now`: each pack once. */
export async function readPutAside(db: Pick<Tx, 'pack' | 'packStateChange'>, scope: SchoolScope, now: Date): Promise<PutAsideInYear> {
  const first = await db.pack.aggregate({ where: scope, _min: { createdAt: true } });
  const changes = await db.packStateChange.findMany({
    where: { ...scope, toState: { in: ['isolated', 'retired', 'handed-over'] } },
    orderBy: { at: 'asc' }, select: { packId: true, fromState: true, toState: true, at: true },
  });
  const inYear = changes.filter(({ at }) => now.getTime() - at.getTime() <= YEAR_DAYS * DAY_MS);
  const packs = (state: string): number => new Set(inYear.filter(({ fromState, toState }) => toState === state && fromState !== state).map(({ packId }) => packId)).size;
  const given = inYear.filter(({ toState }) => toState === 'handed-over').at(-1);
  const setAside = given === undefined ? undefined : changes.find(({ packId, toState, at }) => packId === given.packId && toState !== 'handed-over' && at <= given.at);
  return {
    registerDays: first._min.createdAt === null ? 0 : days(first._min.createdAt, now),
    isolated: packs('isolated'),
    handedOver: packs('handed-over'),
    lastWaitDays: given === undefined || setAside === undefined ? null : days(setAside.at, given.at),
  };
}

const days = (from: Date, to: Date): number => Math.floor((to.getTime() - from.getTime()) / DAY_MS);

import type { Decided } from '@/lib/packs/decided';
import { refusedFor } from '@/lib/packs/decided';
import type { PackHistory } from '@/lib/packs/pack-history';
import type { Pack, StateChange } from '@/lib/packs/pack';
import type { NewState } from '@/lib/packs/states/new-state';
import type { Fault } from '@/lib/forms/form-state';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { MetAnother } from '../why-to-try-again';
import { packHistory } from './read-packs';

/** Who writes, when, and in which school; inside of one transaction. */
export interface Writing { readonly tx: Tx; readonly scope: SchoolScope; readonly by: Pick<Member, 'personId' | 'name'>; readonly at: Date }

export type Written = { readonly ok: true } | { readonly ok: false; readonly faults: readonly Fault[] };

const NO_SUCH_PACK = 'Your register has no such pack';

/**
 * Reads a pack, lets the decision be made about what stands there now, and writes it with its events, in one
 * transaction. Done again from the reading when somebody else wrote in between, so no decision rests on an old state.
 */
export async function decideOnPack<Change>(db: Db, by: Member, at: Date, packId: string, decide: (history: PackHistory, tx: Tx) => Promise<Decided<Change>> | Decided<Change>, write: (writing: Writing, pack: Pack, change: Change) => Promise<void>): Promise<Written> {
  const scope = schoolScope(by);
  return recordChange<Written>(db, by, at, async (tx) => {
    const history = await packHistory(tx, scope, packId);
    if (history === null) return { value: refusedFor(null, NO_SUCH_PACK), events: [] };
    const decided = await decide(history, tx);
    if (!decided.ok) return { value: decided, events: [] };
    await write({ tx, scope, by, at }, history.pack, decided.change);
    return { value: { ok: true }, events: decided.events };
  });
}

/** Changes columns of a pack that nobody changed since it was read in this transaction. */
export async function updatePack({ tx, scope }: Writing, pack: Pick<Pack, 'id' | 'revision'>, data: Parameters<Tx['pack']['updateMany']>[0]['data']): Promise<void> {
  const { count } = await tx.pack.updateMany({ where: { ...scope, id: pack.id, revision: pack.revision }, data: { ...data, revision: { increment: 1 } } });
  if (count !== 1) throw new MetAnother('The pack was changed at the same moment');
}

/** Gives a pack a state, with the row that says why. The same state again moves no date. */
export async function writeState(writing: Writing, pack: Pack, state: NewState): Promise<void> {
  const isNew = state.to !== pack.state;
  await updatePack(writing, pack, { state: state.to, stateReason: state.reason, ...(isNew ? { stateSince: writing.at } : {}) });
  await addStateChange(writing, pack, { ...state, placeNow: null, placeNote: null, inSand: null });
}

type Reasoned = Omit<NewState, 'cause'> & Pick<StateChange, 'cause' | 'placeNow' | 'placeNote' | 'inSand'>;

/** Adds the row of a change of state, or of the place of an isolated pack. */
export async function addStateChange({ tx, scope, by, at }: Writing, pack: { readonly id: string; readonly state: string | null }, { to, reason, cause, placeNow, placeNote, inSand, checkId, incidentId }: Reasoned): Promise<void> {
  await tx.packStateChange.create({
    data: { ...scope, packId: pack.id, fromState: pack.state, toState: to, reason, cause, placeNow, placeNote, inSand, checkId, incidentId, byId: by.personId, byName: by.name, at },
  });
}

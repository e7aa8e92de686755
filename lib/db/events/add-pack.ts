import { addByLabel, type Addable } from '@/lib/events/packs-input';
import { labelKey } from '@/lib/packs/pack';
import type { ListedPack } from '@/lib/packs/pack-list';
import type { Db } from '../client';
import { listPacks } from '../packs/read-packs';
import type { Member } from '../people/find-member';
import { changeEvent, type EventWritten, refusedEvent, whyClosed } from './change-event';
import { writeChosen } from './write-event';

/**
 * Adds one pack to an event by its label. It asks for no revision: it takes nothing away that somebody else wrote, so
 * two people may read labels at the same case.
 * @param addable what decides of a pack whether it may go along
 */
export function addEventPack(db: Db, by: Member, at: Date, { eventId, label }: { readonly eventId: string; readonly label: string }, addable: (listed: ListedPack) => Addable): Promise<EventWritten> {
  return changeEvent(db, by, at, { eventId, may: 'event.change' }, async (writing, event) => {
    const closed = whyClosed(event);
    if (closed !== null) return refusedEvent(closed);
    const register = await listPacks(writing.tx, writing.scope);
    const added = addByLabel(event.packIds, label, register.map(addable), labelKey);
    return added.ok ? { ...await writeChosen(writing, event, added.value), said: added.said } : added;
  });
}

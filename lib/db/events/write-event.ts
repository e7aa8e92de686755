import { randomUUID } from 'node:crypto';
import { changesOf, flatAdults, flatBasics, flatDetails } from '@/lib/events/changes';
import type { EventDetails } from '@/lib/events/details';
import type { EventAdult, EventBasics, EventRecord } from '@/lib/events/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { changeEvent, type EventAttempt, type EventChanged, type EventWriting, refusedEvent, whyClosed } from './change-event';
import { findEvent } from './read-events';

const columns = ({ title, siteId, startsAt, endsAt, teams, people, spectators, schedule }: EventBasics) => ({ title, siteId, startsAt, endsAt, teams, people, spectators, scheduleJson: JSON.stringify(schedule) });

/** Begins an event. */
export async function beginEvent(db: Db, by: Member, at: Date, basics: EventBasics, contentVersion: string): Promise<EventChanged> {
  const scope = schoolScope(by);
  const id = randomUUID();
  return recordChange<EventChanged>(db, by, at, async (tx) => {
    if (!(await isSite(tx, scope, basics.siteId))) return { value: refusedEvent('This place is not there any more. Choose another', 'siteId'), events: [] };
    await tx.event.create({ data: { ...scope, ...columns(basics), id, state: 'draft', contentVersion, preparedById: by.personId, preparedByName: by.name, createdAt: at } });
    return { value: { ok: true, id }, events: [{ kind: 'event.begun', subjectId: id, data: { title: basics.title, siteId: basics.siteId, startsAt: basics.startsAt.toISOString() } }] };
  });
}

/** Begins an event as a copy of another: place, people, packs and all that is agreed, but nothing that was signed or accepted. */
export async function copyEvent(db: Db, by: Member, at: Date, eventId: string, contentVersion: string): Promise<EventChanged> {
  const scope = schoolScope(by);
  const id = randomUUID();
  return recordChange<EventChanged>(db, by, at, async (tx) => {
    const from = await findEvent(tx, scope, eventId);
    if (from === null) return { value: refusedEvent('Your school has no such event'), events: [] };
    if (!(await isSite(tx, scope, from.siteId))) return { value: refusedEvent('The place of this event was put away. Begin a new one'), events: [] };
    await tx.event.create({ data: { ...scope, ...columns(from), id, state: 'draft', detailsJson: JSON.stringify(from.details), contentVersion, preparedById: by.personId, preparedByName: by.name, createdAt: at, copiedFromId: from.id } });
    await writeAdults(tx, scope, id, from.adults);
    await writePacks(tx, scope, id, from.packIds);
    return { value: { ok: true, id }, events: [{ kind: 'event.begun', subjectId: id, data: { title: from.title, siteId: from.siteId, startsAt: from.startsAt.toISOString() } }] };
  });
}

interface Target { readonly eventId: string; readonly revision: number }

export function changeBasics(db: Db, by: Member, at: Date, target: Target, basics: EventBasics): Promise<EventChanged> {
  return edit(db, by, at, target, async ({ tx, scope }, event) => {
    if (basics.siteId !== event.siteId && !(await isSite(tx, scope, basics.siteId))) return refusedEvent('This place is not there any more. Choose another', 'siteId');
    const changes = changesOf(flatBasics(event), flatBasics(basics));
    return { ok: true, data: columns(basics), events: Object.keys(changes).length === 0 ? [] : [{ kind: 'event.changed', subjectId: event.id, data: { changes } }] };
  });
}

/** Changes some of the details: those given. */
export function changeDetails(db: Db, by: Member, at: Date, target: Target, details: Partial<EventDetails>): Promise<EventChanged> {
  return edit(db, by, at, target, (_writing, event) => Promise.resolve(detailsAttempt(event, details)));
}

/** The columns and the entry of changed details. */
export function detailsAttempt(event: EventRecord, details: Partial<EventDetails>) {
  const changes = changesOf(flatDetails(event.details), flatDetails(details));
  return { ok: true as const, data: { detailsJson: JSON.stringify({ ...event.details, ...details }) }, events: Object.keys(changes).length === 0 ? [] : [{ kind: 'event.changed' as const, subjectId: event.id, data: { changes } }] };
}

export function changeAdults(db: Db, by: Member, at: Date, target: Target, adults: readonly EventAdult[]): Promise<EventChanged> {
  return edit(db, by, at, target, async ({ tx, scope }, event) => {
    await tx.eventAdult.deleteMany({ where: { ...scope, eventId: event.id } });
    await writeAdults(tx, scope, event.id, adults);
    return { ok: true, data: {}, events: [{ kind: 'event.changed', subjectId: event.id, data: { changes: changesOf(flatAdults(event.adults), flatAdults(adults)) } }] };
  });
}

export function changePacks(db: Db, by: Member, at: Date, target: Target, choose: (event: EventRecord, tx: Tx) => Promise<{ readonly ok: true; readonly value: readonly string[] } | ReturnType<typeof refusedEvent>>): Promise<EventChanged> {
  return edit(db, by, at, target, async ({ tx, scope }, event) => {
    const chosen = await choose(event, tx);
    if (!chosen.ok) return chosen;
    return writeChosen({ tx, scope }, event, chosen.value);
  });
}

/** Puts the packs that go along in the place of those before. */
export async function writeChosen({ tx, scope }: Pick<EventWriting, 'tx' | 'scope'>, event: EventRecord, packIds: readonly string[]): Promise<EventAttempt> {
  await tx.eventPack.deleteMany({ where: { ...scope, eventId: event.id } });
  await writePacks(tx, scope, event.id, packIds);
  const labels = await tx.pack.findMany({ where: { ...scope, id: { in: [...packIds] } }, orderBy: { labelKey: 'asc' }, select: { label: true } });
  return { ok: true, data: {}, events: [{ kind: 'event.packs-chosen', subjectId: event.id, data: { labels: labels.map(({ label }) => label) } }] };
}

function edit(db: Db, by: Member, at: Date, { eventId, revision }: Target, change: Parameters<typeof changeEvent>[4]): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.change', revision }, (writing: EventWriting, event) => {
    const closed = whyClosed(event);
    return closed === null ? change(writing, event) : Promise.resolve(refusedEvent(closed));
  });
}

async function writeAdults(tx: Tx, scope: SchoolScope, eventId: string, adults: readonly EventAdult[]): Promise<void> {
  await tx.eventAdult.createMany({ data: adults.map(({ name, parts, phone }, position) => ({ ...scope, id: randomUUID(), eventId, position, name, phone, partsJson: JSON.stringify(parts) })) });
}

async function writePacks(tx: Tx, scope: SchoolScope, eventId: string, packIds: readonly string[]): Promise<void> {
  await tx.eventPack.createMany({ data: packIds.map((packId) => ({ ...scope, eventId, packId })) });
}

async function isSite(tx: Tx, scope: SchoolScope, siteId: string): Promise<boolean> {
  return (await tx.site.count({ where: { ...scope, id: siteId, archivedAt: null } })) === 1;
}

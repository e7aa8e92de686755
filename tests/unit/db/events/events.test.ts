import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { verifyLog } from '@/lib/db/audit/verify-log';
import type { EventChanged } from '@/lib/db/events/change-event';
import { cancelEvent, reopenEvent, withdrawEvent } from '@/lib/db/events/end-event';
import { countOpened, findEventLink, listEventLinks, revokeEventLink, shareEvent } from '@/lib/db/events/links';
import { findEvent, listEvents } from '@/lib/db/events/read-events';
import { acceptLineOf, handOverEvent, returnEvent, signEvent } from '@/lib/db/events/sign-event';
import { describeArea, describeVenue } from '@/lib/db/events/venue-by-link';
import { beginEvent, changeAdults, changeBasics, changeDetails, changePacks, copyEvent } from '@/lib/db/events/write-event';
import { findSite } from '@/lib/db/places/read-sites';
import type { EventBasics } from '@/lib/events/event';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { packRowForTest } from '@/tests/support/incident-for-tests';
import { bytes, hash, keysForTest } from '@/tests/support/keys-for-tests';
import { areaForTest } from '@/tests/support/place-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T08:00:00.000Z');
const later = (minutes: number): Date => new Date(AT.getTime() + minutes * 60_000);

function idOf(changed: EventChanged): string {
  if (!changed.ok) throw new Error(changed.faults.map(({ message }) => message).join('; '));
  return changed.id;
}

describe.each(ENGINES_HERE)('events on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const ours = await schoolForTest(db, 'Ours');
    const theirs = await schoolForTest(db, 'Theirs');
    const { scope } = ours;
    const [officer, stranger, organiser] = [ours.officer, theirs.officer, await memberForTest(db, scope, 'organiser', 'K. M.')];
    const { id: siteId } = await db.site.create({ data: { ...scope, name: 'Riverside', kind: 'away', address: '8 Mill Road', createdAt: AT } });
    const basics: EventBasics = { title: 'Autumn cup', siteId, startsAt: new Date('2026-12-05T09:00:00Z'), endsAt: new Date('2026-12-05T17:00:00Z'), teams: 2, people: 16, spectators: 30, schedule: [{ time: '09:00', what: 'Doors open' }] };
    const eventId = idOf(await beginEvent(db, organiser, AT, basics, edition2.version));
    const read = async () => {
      const event = await findEvent(db, scope, eventId);
      if (event === null) throw new Error('the event is gone');
      return event;
    };
    const target = async () => ({ eventId, revision: (await read()).revision });
    return { db, scope, theirs, officer, stranger, organiser, siteId, basics, eventId, read, target };
  }
  type Setting = Awaited<ReturnType<typeof setting>>;

  async function handedBy({ db, scope, organiser, officer, eventId, read }: Setting, documentId: string): Promise<void> {
    if ((await db.signingAuthority.count({ where: scope })) === 0) await keysForTest(db, officer, AT, [{ id: 'of-teacher', digit: 'b', of: organiser }, { id: 'of-officer', digit: 'c', of: officer }]);
    const document = { id: documentId, number: `SB-${documentId}`, kind: 'event' as const, title: 'File', format: 'A4' as const, language: 'en-GB', fingerprint: documentId, of: { eventId }, bytes: [bytes('file'), bytes(`${documentId} signed once`)] as const, data: bytes('data') };
    idOf(await handOverEvent(db, organiser, later(1), { eventId, revision: (await read()).revision, officerId: officer.personId, versionId: null, document, signature: { part: 'preparer', signerId: organiser.personId, signerName: 'K. M.', signerPost: 'teacher', certificateId: 'of-teacher', certificateFingerprint: hash('b') } }));
  }

  async function signedBy(all: Setting, documentId = 'file-1'): Promise<void> {
    const { db, officer, eventId, read } = all;
    await handedBy(all, documentId);
    idOf(await signEvent(db, officer, later(2), { eventId, revision: (await read()).revision, openLines: [], signature: { part: 'officer', signerId: officer.personId, signerName: 'R. O.', signerPost: 'officer', certificateId: 'of-officer', certificateFingerprint: hash('c') }, file: { documentId, number: `SB-${documentId}`, before: 1, bytes: bytes(`${documentId} signed twice`) } }));
  }

  it('are kept with people, packs and details, and copied without what was signed or accepted', async () => {
    const all = await setting();
    const { db, scope, organiser, officer, eventId, read, target } = all;
    const packs = [await packRowForTest(db, scope, 'W-11'), await packRowForTest(db, scope, 'W-12')];
    idOf(await changePacks(db, organiser, later(1), await target(), () => Promise.resolve({ ok: true, value: packs })));
    idOf(await changeAdults(db, organiser, later(2), await target(), [{ name: 'Kim Marsh', phone: '01 23', parts: ['leads', 'may-stop'] }]));
    idOf(await changeDetails(db, organiser, later(3), await target(), { charging: 'no', alarm: 'bell' }));
    idOf(await acceptLineOf(db, officer, later(4), eventId, { lineId: 'place-assessment', words: 'none', reason: 'seen', line: { mayBeAccepted: true, open: true } }));
    expect(await read()).toMatchObject({ state: 'draft', packIds: [...packs].sort(), adults: [{ name: 'Kim Marsh' }], details: { charging: 'no', alarm: 'bell' }, acceptances: [{ lineId: 'place-assessment', words: 'none' }] });
    const copy = idOf(await copyEvent(db, organiser, later(5), eventId, edition2.version));
    expect(await findEvent(db, scope, copy)).toMatchObject({ state: 'draft', copiedFromId: eventId, packIds: [...packs].sort(), adults: [{ name: 'Kim Marsh' }], details: { charging: 'no' }, acceptances: [] });
    const log = JSON.stringify(await db.auditEntry.findMany());
    expect(log).not.toContain('01 23');
    expect(log).not.toContain('Kim Marsh');
    expect((await verifyLog(db, scope.schoolId)).ok).toBe(true);
  });

  it('tell the second of two people who change one at once', async () => {
    const { db, organiser, basics, eventId, read } = await setting();
    const { revision } = await read();
    idOf(await changeBasics(db, organiser, later(1), { eventId, revision }, { ...basics, people: 18 }));
    expect(await changeDetails(db, organiser, later(2), { eventId, revision }, { alarm: 'lost?' })).toMatchObject({ ok: false });
    expect(await read()).toMatchObject({ people: 18, details: { alarm: null } });
  });

  it('are of one school: another finds none, changes none and shares none', async () => {
    const { db, theirs, stranger, organiser, basics, eventId, target, read } = await setting();
    expect(await findEvent(db, theirs.scope, eventId)).toBeNull();
    expect(await listEvents(db, theirs.scope)).toEqual([]);
    const before = await read();
    expect(await changeBasics(db, stranger, later(1), await target(), basics)).toMatchObject({ ok: false });
    expect(await cancelEvent(db, stranger, later(1), eventId, 'mine')).toMatchObject({ ok: false });
    expect(await copyEvent(db, stranger, later(1), eventId, edition2.version)).toMatchObject({ ok: false });
    expect(await shareEvent(db, stranger, later(1), { eventId, purpose: 'describe-venue', forWhom: 'me', days: 3 }, (id) => id)).toMatchObject({ ok: false });
    expect(await beginEvent(db, organiser, later(1), { ...basics, siteId: theirs.siteId }, edition2.version)).toMatchObject({ ok: false, faults: [{ field: 'siteId' }] });
    expect(await read()).toEqual(before);
  });

  it('are signed by two, do not change meanwhile, and are withdrawn with all their papers', async () => {
    const all = await setting();
    const { db, scope, organiser, officer, eventId, read, target } = all;
    await signedBy(all);
    expect(await read()).toMatchObject({ state: 'signed', officerId: officer.personId });
    expect(await changeDetails(db, organiser, later(3), await target(), { alarm: 'other' })).toMatchObject({ ok: false });
    idOf(await shareEvent(db, organiser, later(4), { eventId, purpose: 'see-document', forWhom: 'Ada', days: 3 }, (id) => `seal ${id}`));
    idOf(await withdrawEvent(db, organiser, later(5), eventId, 'hall closed'));
    expect(await read()).toMatchObject({ state: 'withdrawn', withdrawnReason: 'hall closed' });
    expect(await db.document.findFirst({ where: { ...scope, eventId } })).toMatchObject({ withdrawnReason: 'hall closed' });
    expect(await listEventLinks(db, scope, eventId)).toMatchObject([{ documentNumber: 'SB-file-1', revokedAt: null }]);
    expect((await verifyLog(db, scope.schoolId)).ok).toBe(true);
  });

  it('keep a signed file in force while they are changed, until another is handed over in its place', async () => {
    const all = await setting();
    const { db, scope, organiser, eventId, read } = all;
    await signedBy(all);
    idOf(await reopenEvent(db, organiser, later(3), eventId));
    expect(await read()).toMatchObject({ state: 'draft' });
    const first = () => db.document.findFirst({ where: { ...scope, id: 'file-1' }, select: { replacedAt: true, withdrawnAt: true } });
    expect(await first()).toEqual({ replacedAt: null, withdrawnAt: null });
    await signedBy(all, 'file-2');
    expect((await first())?.replacedAt).not.toBeNull();
  });

  it('void the file that waits when they are returned or a line is let stand', async () => {
    const all = await setting();
    const { db, scope, organiser, officer, eventId, read } = all;
    const waiting = () => db.document.count({ where: { ...scope, eventId, state: 'part-signed', replacedAt: null } });
    const line = { lineId: 'packs-watch', words: 'Under watch: W-07.', reason: 'seen', line: { mayBeAccepted: true, open: true } };
    await handedBy(all, 'file-1');
    expect(await acceptLineOf(db, officer, later(3), eventId, { ...line, line: { mayBeAccepted: false, open: true } })).toMatchObject({ ok: false });
    expect(await waiting()).toBe(1);
    idOf(await acceptLineOf(db, officer, later(3), eventId, line));
    expect([await waiting(), (await read()).state]).toEqual([0, 'with-officer']);
    await handedBy(all, 'file-2');
    expect(await returnEvent(db, organiser, later(5), eventId, 'no')).toMatchObject({ ok: false });
    idOf(await returnEvent(db, officer, later(5), eventId, 'too many packs'));
    expect([await waiting(), (await read()).state, (await read()).returnedReason]).toEqual([0, 'returned', 'too many packs']);
  });

  it('let the venue describe itself by a link, and nobody by one that was taken back', async () => {
    const { db, scope, organiser, siteId, eventId, read } = await setting();
    idOf(await shareEvent(db, organiser, later(1), { eventId, purpose: 'describe-venue', forWhom: 'Ada', days: 3 }, () => 'seal'));
    const link = await findEventLink(db, 'seal');
    if (link === null) throw new Error('no link');
    await countOpened(db, link, later(2));
    const by = { tokenSeal: 'seal', schoolId: scope.schoolId, name: 'Ada Mill' };
    const site = { emergencyNumber: '112', meetingPlace: 'car park', secondMeetingPlace: null, keyHolder: 'Ada Mill', keyHolderPhone: '01 25' };
    const before = { revision: (await read()).revision, siteRevision: (await findSite(db, scope, siteId))?.revision ?? 0 };
    expect(await describeVenue(db, by, later(3), { ...before, site, details: { alarm: 'bell', agreed: ['exits-clear'] } })).toEqual({ ok: true });
    expect(await describeVenue(db, by, later(4), { ...before, site, details: { alarm: 'siren' } })).toMatchObject({ ok: false });
    expect(await describeArea(db, by, later(5), { areaId: null, revision: 0, area: areaForTest({ use: 'isolation', name: 'Yard', outdoors: true }) })).toEqual({ ok: true });
    expect(await read()).toMatchObject({ details: { alarm: 'bell', agreed: ['exits-clear'] } });
    expect(await findSite(db, scope, siteId)).toMatchObject({ name: 'Riverside', address: '8 Mill Road', meetingPlace: 'car park', areas: [{ name: 'Yard' }] });
    expect(await findEventLink(db, 'seal')).toMatchObject({ openedCount: 1, answeredByName: 'Ada Mill' });
    idOf(await revokeEventLink(db, organiser, later(6), { eventId, linkId: link.id }, () => true));
    expect(await describeArea(db, by, later(7), { areaId: null, revision: 0, area: areaForTest({ name: 'Too late' }) })).toMatchObject({ ok: false });
    expect(await db.auditEntry.count({ where: { ...scope, actorId: null, actorName: 'Ada Mill (by link)' } })).toBeGreaterThan(0);
  });
});

import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { addEventPack } from '@/lib/db/events/add-pack';
import { cancelEvent } from '@/lib/db/events/end-event';
import { findEvent } from '@/lib/db/events/read-events';
import { beginEvent } from '@/lib/db/events/write-event';
import type { Member } from '@/lib/db/people/find-member';
import { addable } from '@/lib/server/events/choosable-packs';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { packRowForTest } from '@/tests/support/incident-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';
import { secondLimits } from '@/tests/support/second-pack-limits';

const AT = new Date('2026-11-25T08:00:00.000Z');

describe.each(ENGINES_HERE)('a pack added to an event by its label on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const [{ scope, siteId }, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    const memberOf = (role: Member['role'], name: string): Promise<Member> => memberForTest(db, scope, role, name);
    const organiser = await memberOf('organiser', 'K. M.');
    const begun = await beginEvent(db, organiser, AT, { title: 'Autumn cup', siteId, startsAt: AT, endsAt: AT, teams: null, people: null, spectators: null, schedule: [] }, edition2.version);
    if (!begun.ok) throw new Error('the event was not begun');
    const add = (label: string, by: Member = organiser) => addEventPack(db, by, AT, { eventId: begun.id, label }, (listed) => addable(secondLimits, listed));
    const chosen = async () => (await findEvent(db, scope, begun.id))?.packIds;
    const noted = () => db.auditEntry.count({ where: { ...scope, kind: 'event.packs-chosen' } });
    const pack = (label: string, state?: string) => packRowForTest(db, scope, label, state);
    return { db, scope, theirs, organiser, eventId: begun.id, memberOf, add, chosen, noted, pack };
  }

  it('is added once, by its code or as it is typed, with an entry of the log', async () => {
    const { db, scope, add, chosen, noted, pack } = await setting();
    const [one, two] = [await pack('W-01'), await pack('W-02')];
    expect(await add(`/packs/${one}`)).toMatchObject({ ok: true, revision: 2, said: expect.stringMatching(/^W-01 added, 1 of 2\./) as string });
    expect(await add(`/packs/${one}`)).toMatchObject({ ok: false, faults: [{ message: 'W-01 is on the list already, 1 of 2.' }] });
    expect(await add('w-02')).toMatchObject({ ok: true, revision: 3 });
    expect(await chosen()).toEqual([one, two].sort());
    expect(await noted()).toBe(2);
    expect((await verifyLog(db, scope.schoolId)).ok).toBe(true);
  });

  it('is not added when the register does not know it, when it is of another school, or when it is isolated', async () => {
    const { db, theirs, add, chosen, noted, pack } = await setting();
    const other = await packRowForTest(db, theirs.scope, 'T-01');
    const nothing = { ok: false, faults: [{ message: 'Your register has no pack with this label. Nothing was added.' }] };
    expect(await add('W-99')).toMatchObject(nothing);
    expect(await add('T-01')).toMatchObject(nothing);
    expect(await add(`/packs/${other}`)).toMatchObject(nothing);
    await pack('W-03', 'isolated');
    expect(await add('W-03')).toMatchObject({ ok: false, faults: [{ message: 'W-03 is isolated and does not go along. It was not added.' }] });
    expect([await chosen(), await noted()]).toEqual([[], 0]);
  });

  it('is not added by who may not, in another school, nor to what is over', async () => {
    const { db, theirs, organiser, eventId, memberOf, add, chosen, pack } = await setting();
    await pack('W-01');
    expect(await add('W-01', await memberOf('helper', 'H. P.'))).toMatchObject({ ok: false });
    expect(await add('W-01', await memberOf('event-organiser', 'E. O.'))).toMatchObject({ ok: false });
    expect(await add('W-01', { ...theirs.officer, ...theirs.scope, role: 'safety-officer' })).toMatchObject({ ok: false, faults: [{ message: 'Your school has no such event' }] });
    expect((await cancelEvent(db, organiser, AT, eventId, 'hall closed')).ok).toBe(true);
    expect(await add('W-01')).toMatchObject({ ok: false });
    expect(await chosen()).toEqual([]);
  });

  it('stands beside what another person adds at the same moment', async () => {
    const { add, chosen, pack } = await setting();
    const packs = [await pack('W-01'), await pack('W-02')];
    const answers = await Promise.all(['W-01', 'W-02'].map((label) => add(label)));
    expect(answers.map(({ ok }) => ok)).toEqual([true, true]);
    expect(await chosen()).toEqual(packs.sort());
  });
});

import { describe, expect, it } from 'vitest';
import { addAction, changeAction, closeActionOf, listActions, openActionAgain, readAction } from '@/lib/db/assessments/actions';
import { addComment, listComments, settleComment, withdrawComment } from '@/lib/db/assessments/comments';
import { listLooks, lookAt } from '@/lib/db/assessments/looks';
import { paperMaterial } from '@/lib/db/assessments/paper-material';
import { saveAnswers } from '@/lib/db/assessments/save-answer';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { draftForTest } from '@/tests/support/draft-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T08:00:00.000Z');

describe.each(ENGINES_HERE)('actions and comments on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function prepared() {
    const { db } = await newDatabase();
    const { ours, teacher, versionId } = await draftForTest(db, AT);
    const input = { versionId, controlId: 'mineral-surface', stopId: null, title: 'Lay a slab', details: '', ownerId: teacher.personId, ownerName: null, dueOn: '2026-12-01' };
    return { db, ours, teacher, versionId, input };
  }

  it('adds an action once, counts it as planned while it is open, and keeps each step in the log', async () => {
    const { db, ours, teacher, versionId, input } = await prepared();
    const added = await addAction(db, teacher, AT, input);
    if (!added.ok) throw new Error(added.why);
    expect(await addAction(db, teacher, AT, input)).toMatchObject({ ok: false, why: expect.stringContaining('K. M. does it') as string });
    expect((await paperMaterial(db, ours.scope, versionId)).actions.map(({ controlId, state }) => [controlId, state])).toEqual([['mineral-surface', 'open']]);
    expect(await closeActionOf(db, teacher, AT, added.id, 'done', ' laid on Monday ')).toMatchObject({ ok: true });
    expect(await readAction(db, ours.scope, added.id)).toMatchObject({ state: 'done', closedNote: 'laid on Monday', closedByName: 'K. M.', of: 'Room 9, version 1' });
    expect(await openActionAgain(db, teacher, AT, added.id, 'it broke')).toMatchObject({ ok: true });
    expect(await db.auditEntry.findMany({ where: { kind: { startsWith: 'action.' } }, orderBy: { sequence: 'asc' }, select: { kind: true } })).toEqual([{ kind: 'action.added' }, { kind: 'action.closed' }, { kind: 'action.opened-again' }]);
    expect((await verifyLog(db, ours.scope.schoolId)).ok).toBe(true);
  });

  it('does not change what somebody else changed meanwhile, nor what is closed', async () => {
    const { db, ours, teacher, input } = await prepared();
    const added = await addAction(db, teacher, AT, input);
    if (!added.ok) throw new Error(added.why);
    const change = { actionId: added.id, revision: 1, title: 'Lay two slabs', details: '', ownerId: null, ownerName: 'Caretaker', dueOn: '2026-12-02' };
    expect(await changeAction(db, teacher, AT, change)).toMatchObject({ ok: true });
    expect(await changeAction(db, ours.officer, AT, { ...change, title: 'Lay three' })).toMatchObject({ ok: false });
    expect(await readAction(db, ours.scope, added.id)).toMatchObject({ title: 'Lay two slabs', ownerId: null, ownerName: 'Caretaker', revision: 2 });
    await closeActionOf(db, teacher, AT, added.id, 'dropped', 'too dear');
    expect(await changeAction(db, teacher, AT, { ...change, revision: 3 })).toMatchObject({ ok: false });
  });

  it('is of one school: another sees and changes none of it', async () => {
    const { db, teacher, versionId, input } = await prepared();
    const added = await addAction(db, teacher, AT, input);
    if (!added.ok) throw new Error(added.why);
    const theirs = await schoolForTest(db, 'Theirs');
    expect(await listActions(db, theirs.scope)).toEqual([]);
    expect(await closeActionOf(db, theirs.officer, AT, added.id, 'done', 'x')).toMatchObject({ ok: false });
    expect(await addAction(db, theirs.officer, AT, { ...input, ownerId: theirs.officer.personId })).toMatchObject({ ok: false });
    expect(await addAction(db, teacher, AT, { ...input, controlId: null, ownerId: theirs.officer.personId })).toMatchObject({ ok: false });
    expect(await addComment(db, theirs.officer, AT, { versionId, questionId: null, replyToId: null, text: 'x' })).toMatchObject({ ok: false });
  });

  it('keeps remarks with their replies, settles each once, and takes back only what nobody answered', async () => {
    const { db, ours, teacher, versionId } = await prepared();
    const say = (by: Parameters<typeof addComment>[1], text: string, replyToId: string | null = null) => addComment(db, by, AT, { versionId, questionId: 'room-exits', replyToId, text });
    await say(ours.officer, 'Which door?');
    const [asked] = await listComments(db, ours.scope, versionId);
    await say(teacher, 'The one to the yard.', asked?.id ?? '');
    expect(await withdrawComment(db, ours.officer, AT, versionId, asked?.id ?? '')).toMatchObject({ ok: false, why: expect.stringContaining('answered') as string });
    expect(await settleComment(db, ours.officer, AT, versionId, asked?.id ?? '')).toEqual({ ok: true });
    expect(await settleComment(db, teacher, AT, versionId, asked?.id ?? '')).toMatchObject({ ok: false });
    expect((await listComments(db, ours.scope, versionId)).map(({ text, questionId, settledByName }) => [text, questionId, settledByName !== null])).toEqual([['Which door?', 'room-exits', true], ['The one to the yard.', 'room-exits', false]]);
  });

  it('notes which revision of an answer somebody has looked at', async () => {
    const { db, ours, teacher, versionId } = await prepared();
    const answer = { questionId: 'room-exits', value: 'two', notSureTicks: [], note: '', seen: 0, origin: 'typed' as const };
    await saveAnswers(db, teacher, AT, versionId, [answer]);
    await lookAt(db, ours.officer, AT, versionId, ['room-exits', 'nothing']);
    expect([...(await listLooks(db, ours.scope, versionId, ours.officer.personId))]).toEqual([['room-exits', 1]]);
    expect((await listLooks(db, ours.scope, versionId, teacher.personId)).size).toBe(0);
  });
});

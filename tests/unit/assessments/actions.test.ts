import { describe, expect, it } from 'vitest';
import { AddActionSchema } from '@/lib/assessments/action-input';
import { type ActionRecord, closeAction, inOrder, isOverdue, mayChange, narrowedActions, openAgain } from '@/lib/assessments/actions';

const TODAY = '2026-11-25';
const action = (id: string, over: Partial<ActionRecord> = {}): ActionRecord => ({
  id, versionId: 'v', controlId: null, stopId: null, of: 'Room 9, version 1', title: `Action ${id}`, details: '', ownerId: null, ownerName: 'caretaker', dueOn: '2026-12-01', state: 'open',
  createdAt: new Date(0), closedAt: null, closedByName: '', closedNote: '', revision: 1, ...over,
});

describe('an action', () => {
  it('is overdue from the day after its day on, and never once it is closed', () => {
    expect(isOverdue(action('a', { dueOn: TODAY }), TODAY)).toBe(false);
    expect(isOverdue(action('a', { dueOn: '2026-11-24' }), TODAY)).toBe(true);
    expect(isOverdue(action('a', { dueOn: '2026-11-24', state: 'done' }), TODAY)).toBe(false);
  });

  it('is not closed nor opened again without a word, nor closed twice', () => {
    expect(closeAction('open', 'done', '  ')).toMatchObject({ ok: false });
    expect(closeAction('open', 'dropped', ' too dear ')).toEqual({ ok: true, change: { state: 'dropped', note: 'too dear' } });
    expect(closeAction('done', 'dropped', 'x')).toEqual({ ok: false, why: 'It is done already.' });
    expect(openAgain('open', 'x')).toMatchObject({ ok: false });
    expect(openAgain('done', '')).toMatchObject({ ok: false });
    expect(openAgain('dropped', 'now there is money')).toEqual({ ok: true, change: { state: 'open' } });
    expect(mayChange('done')).toMatchObject({ ok: false });
  });

  it('stands with those that are open first, the earliest first', () => {
    const late = action('late', { dueOn: '2027-01-01' });
    const done = action('done', { state: 'done', closedAt: new Date(5) });
    const dropped = action('dropped', { state: 'dropped', closedAt: new Date(9) });
    expect(inOrder([done, late, dropped, action('soon')]).map(({ id }) => id)).toEqual(['soon', 'late', 'dropped', 'done']);
  });

  it('is found by every word somewhere in its row, and by its state', () => {
    const rows = [action('a', { title: 'Slab under the chargers' }), action('b', { dueOn: '2026-01-01' }), action('c', { state: 'done' })];
    const found = (q: string, state: Parameters<typeof narrowedActions>[1]['state']) => narrowedActions(rows, { q, state }, TODAY).map(({ id }) => id);
    expect(found('', 'open')).toEqual(['b', 'a']);
    expect(found('', 'overdue')).toEqual(['b']);
    expect(found('SLAB caretaker', 'all')).toEqual(['a']);
    expect(found('slab done', 'all')).toEqual([]);
  });

  it('needs somebody who does it, with an account or by name, and a day that exists', () => {
    const typed = { versionId: 'v', controlId: '', stopId: '', title: 'Slab', details: '', ownerId: '', ownerName: '', dueOn: '2026-12-01' };
    expect(AddActionSchema.safeParse(typed).error?.issues.map(({ path }) => path)).toEqual([['ownerId']]);
    expect(AddActionSchema.safeParse({ ...typed, ownerName: 'Caretaker' }).data).toMatchObject({ ownerId: null, ownerName: 'Caretaker', controlId: null });
    expect(AddActionSchema.safeParse({ ...typed, ownerId: 'p', dueOn: '2026-02-30' }).success).toBe(false);
  });
});

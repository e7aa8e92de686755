import { describe, expect, it } from 'vitest';
import { ROLES } from '@/lib/access/roles';
import { blockedUses, blockedWords } from '@/lib/packs/states/blocked-uses';
import { causeOfIsolation, mustBeIsolatedNow, placeOfIsolated } from '@/lib/packs/pack-history';
import { movePack, MovePackSchema, type MovePack } from '@/lib/packs/states/move-pack';
import { MOVES } from '@/lib/packs/states/moves';
import { stateOfNewPack } from '@/lib/packs/states/new-pack-state';
import { PACK_STATES } from '@/lib/packs/states/pack-states';
import { mayReleasePack } from '@/lib/packs/states/release-pack';
import { sayWhere } from '@/lib/packs/states/say-where';
import { stateAfterCheck } from '@/lib/packs/states/after-check';
import { changeForTest, checkForTest, historyForTest, later, MONDAY, packForTest } from '@/tests/support/pack-for-tests';
import { secondLimits } from '@/tests/support/second-pack-limits';

const command = (given: Partial<MovePack>): MovePack => ({ packId: 'pack-1', to: 'watch', reason: 'looked odd', collectedBy: null, receiverName: null, ...given });
const isolated = packForTest({ state: 'isolated' });
const nearby = historyForTest({ pack: isolated, changes: [changeForTest(MONDAY)] });

describe('the ways from state to state', () => {
  it('lead out of isolation by release or hand-over alone, and nowhere from handed over', () => {
    expect(MOVES.filter(({ from }) => from === 'isolated').map(({ to, action }) => [to, action])).toEqual([['watch', 'pack.release'], ['handed-over', 'pack.hand-over']]);
    expect(MOVES.filter(({ from }) => from === 'handed-over')).toEqual([]);
  });

  it.each(PACK_STATES.flatMap((from) => PACK_STATES.map((to) => [from, to] as const)).filter(([from, to]) => !MOVES.some((move) => move.from === from && move.to === to)))('do not lead from %s to %s', (from, to) => {
    expect(movePack(secondLimits, historyForTest({ pack: packForTest({ state: from }) }), command({ to }), 'safety-officer')).toMatchObject({ ok: false });
  });

  it.each(ROLES)('towards caution are open to %s', (role) => {
    expect(movePack(secondLimits, historyForTest(), command({ to: 'watch' }), role)).toMatchObject({ ok: true, change: { state: { to: 'watch' } } });
    expect(movePack(secondLimits, historyForTest(), command({ to: 'isolated', cause: 'sign' }), role)).toMatchObject({ ok: true });
  });

  it.each([['helper', 'retired'], ['event-organiser', 'retired'], ['nobody', 'watch']] as const)('are closed to %s where it says %s', (role, to) => {
    expect(movePack(secondLimits, historyForTest(), command({ to }), role)).toMatchObject({ ok: false });
  });

  it('write why into the log', () => {
    const moved = movePack(secondLimits, historyForTest(), command({ to: 'isolated', cause: 'nearby', reason: 'lay beside W-07' }), 'helper');
    expect(moved).toMatchObject({ events: [{ kind: 'pack.state-changed', subjectId: 'pack-1', data: { label: 'W-11', from: 'in-use', to: 'isolated', reason: 'lay beside W-07', cause: 'nearby' } }] });
  });

  it('ask why it is isolated, and for a reason in words', () => {
    expect(movePack(secondLimits, historyForTest(), command({ to: 'isolated' }), 'helper')).toMatchObject({ ok: false, faults: [{ field: 'cause' }] });
    expect(MovePackSchema.safeParse({ packId: 'a', to: 'watch', reason: '  ' }).success).toBe(false);
  });

  it('lead back in use only by a check made since, which found no sign', () => {
    const watched = packForTest({ state: 'watch', stateSince: MONDAY });
    const back = (checks: Parameters<typeof historyForTest>[0]) => movePack(secondLimits, historyForTest({ pack: watched, ...checks }), command({ to: 'in-use' }), 'organiser');
    expect(back({ checks: [] })).toMatchObject({ ok: false });
    expect(back({ checks: [checkForTest(later(-1))] })).toMatchObject({ ok: false });
    expect(back({ checks: [checkForTest(later(2), { cellSpread: 0.12 }), checkForTest(later(1))] })).toMatchObject({ ok: false });
    expect(back({ checks: [checkForTest(later(2))] })).toMatchObject({ ok: true });
  });

  it('end with whoever received it', () => {
    expect(movePack(secondLimits, nearby, command({ to: 'handed-over' }), 'organiser')).toMatchObject({ ok: false, faults: [{ field: 'collectedBy' }] });
    expect(movePack(secondLimits, nearby, command({ to: 'handed-over', collectedBy: 'Collection point', receiverName: 'A. B.' }), 'organiser'))
      .toMatchObject({ ok: true, change: { handOver: { receiverName: 'A. B.' } }, events: [{ kind: 'pack.state-changed' }, { kind: 'packs.handed-over' }] });
  });
});

describe('release from isolation', () => {
  const ready = { ...nearby, checks: [checkForTest(later(25))] };

  it('is the officer’s, for a pack that only lay nearby, a day apart and checked', () => {
    expect(movePack(secondLimits, ready, command({ to: 'watch', reason: 'only nearby' }), 'safety-officer'))
      .toMatchObject({ ok: true, change: { state: { to: 'watch' } }, events: [{ kind: 'pack.state-changed' }, { kind: 'pack.released', data: { hoursApart: 25 } }] });
  });

  it.each([
    ['somebody else asks', ready, 'organiser'],
    ['nobody checked it', nearby, 'safety-officer'],
    ['the check was made too soon', { ...nearby, checks: [checkForTest(later(23))] }, 'safety-officer'],
    ['it was isolated for a sign', { ...ready, changes: [changeForTest(MONDAY, { cause: 'sign' })] }, 'safety-officer'],
    ['nobody wrote down why', { ...ready, changes: [changeForTest(MONDAY, { cause: null })] }, 'safety-officer'],
    ['a sign was found while it lay apart', { ...ready, checks: [checkForTest(later(30)), checkForTest(later(2), { swollen: true })] }, 'safety-officer'],
    ['a sign was found on the day before', { ...ready, checks: [checkForTest(later(30)), checkForTest(later(-3), { smell: true })] }, 'safety-officer'],
    ['it got a graver cause later', { ...ready, changes: [changeForTest(later(1), { from: 'isolated', cause: 'incident' }), changeForTest(MONDAY)] }, 'safety-officer'],
    ['the last check shows a sign', { ...nearby, checks: [checkForTest(later(25), { cellSpread: 0.12 })] }, 'safety-officer'],
  ] as const)('is refused when %s', (_, history, role) => {
    expect(movePack(secondLimits, history, command({ to: 'watch', reason: 'only nearby' }), role)).toMatchObject({ ok: false });
  });

  it('names every reason against it', () => {
    const may = mayReleasePack(secondLimits, nearby, '', 'helper');
    expect(may.ok ? '' : may.reason.split('; ')).toHaveLength(4);
  });
});

describe('a verdict', () => {
  const found = (given: Parameters<typeof checkForTest>[1]) => checkForTest(MONDAY, given);

  it.each([
    ['in-use', { smell: true }, 'isolated'], ['watch', { dented: true }, 'isolated'], ['retired', { swollen: true }, 'isolated'],
    ['in-use', { damagedLead: true }, 'retired'], ['watch', { damagedLead: true }, 'retired'], ['in-use', { cellSpread: 0.12 }, 'watch'],
  ] as const)('moves a pack %s with %j to %s at once', (state, given, to) => { expect(stateAfterCheck(state, found(given))).toMatchObject({ to }); });

  it.each([['in-use', {}], ['watch', {}], ['isolated', {}], ['isolated', { damagedLead: true }], ['retired', { cellSpread: 0.12 }], ['watch', { cellSpread: 0.12 }]] as const)('leaves a pack %s with %j where it is', (state, given) => {
    expect(stateAfterCheck(state, found(given))).toBeNull();
  });

  it('of an isolated pack that shows a sign makes it a sign of its own', () => {
    expect(stateAfterCheck('isolated', found({ swollen: true }))).toMatchObject({ to: 'isolated', cause: 'sign', reason: 'Check: swollen, not growing' });
  });
});

describe('an isolated pack', () => {
  it('must be isolated now until somebody says where it is; a new isolation asks anew', () => {
    expect(mustBeIsolatedNow(nearby)).toBe(true);
    const said = { ...nearby, changes: [changeForTest(later(1), { from: 'isolated', cause: null, placeNow: 'outdoor-spot', inSand: true }), ...nearby.changes] };
    expect(mustBeIsolatedNow(said)).toBe(false);
    expect(placeOfIsolated(said)).toMatchObject({ placeNow: 'outdoor-spot' });
    expect(causeOfIsolation(said)).toBe('nearby');
    const again = { ...nearby, changes: [changeForTest(later(90)), changeForTest(later(50), { from: 'isolated', to: 'watch', cause: null }), ...said.changes] };
    expect(mustBeIsolatedNow(again)).toBe(true);
  });

  it('is placed at a place of the content only, and only while it is isolated', () => {
    const where = { packId: 'pack-1', placeNow: 'outdoor-spot', placeNote: null, inSand: 'not sure' } as const;
    expect(sayWhere(secondLimits, nearby, where)).toMatchObject({ ok: true, change: { placeNow: 'outdoor-spot', inSand: null }, events: [{ kind: 'pack.placed' }] });
    expect(sayWhere(secondLimits, nearby, { ...where, placeNow: 'my bag' })).toMatchObject({ ok: false, faults: [{ field: 'placeNow' }] });
    expect(sayWhere(secondLimits, historyForTest(), where)).toMatchObject({ ok: false });
  });
});

describe('what is stopped', () => {
  it('is everything while nobody has checked it, or it is out of service', () => {
    expect(blockedUses(secondLimits, packForTest(), null).uses).toEqual(['charge', 'fly', 'travel']);
    expect(blockedUses(secondLimits, isolated, checkForTest(MONDAY)).uses).toEqual(['charge', 'fly', 'travel']);
  });

  it('is what the signs of the last check stop', () => {
    expect(blockedUses(secondLimits, packForTest(), checkForTest(MONDAY))).toEqual({ uses: [], why: 'the last check found no sign' });
    expect(blockedUses(secondLimits, packForTest(), checkForTest(MONDAY, { cellSpread: 0.12 }))).toMatchObject({ uses: ['fly'], why: expect.stringContaining('cells differ') as string });
  });

  it.each([[['charge', 'fly', 'travel'], 'Do not charge, fly or take along'], [['fly'], 'Do not fly'], [[], null]] as const)('is said in words: %j', (uses, words) => { expect(blockedWords(uses)).toBe(words); });
});

describe('a new pack', () => {
  it.each([['full-4-20', false, 'in-use'], ['not-marked', false, 'watch'], ['full-4-20', true, 'watch'], ['full-4-20', null, 'watch'], ['other-chemistry', false, 'watch']] as const)('of %s, second-hand %s, begins %s', (cellType, secondHand, to) => {
    expect(stateOfNewPack(secondLimits, { cellType, secondHand }).to).toBe(to);
  });
});

import { describe, expect, it } from 'vitest';
import { ROLES, type Role } from '@/lib/access/roles';
import type { PackFact, PaperFact, SignedFact, TodayFacts } from '@/lib/today/facts';
import { daysWords, listed } from '@/lib/today/item';
import { todayOf } from '@/lib/today/today';

const NOTHING: TodayFacts = { role: 'organiser', papers: [], packs: [], sessions: [], incidents: [], actions: [], events: [], setUp: { people: 4, sites: 1, packs: 24, papers: 1 } };
const today = (given: Partial<TodayFacts>) => todayOf({ ...NOTHING, ...given });
const ids = (given: Partial<TodayFacts>) => { const { now, soon } = today(given); return { now: now.map(({ id }) => id), soon: soon.map(({ id }) => id) }; };
const pack = (label: string, need: PackFact['need'], words = 'Waits 9 days for collection'): PackFact => ({ id: label, label, need, words });
const standing = (given: Partial<SignedFact> = {}): SignedFact => ({ force: 'in force', reason: null, until: '21 December 2026', daysLeft: 200, drifts: [], acceptances: [], ...given });
const paper = (given: Partial<PaperFact> = {}): PaperFact => ({ id: 'v1', name: '“Hall”, version 1', state: 'signed', preparer: 'K. M.', officer: 'R. O.', isMine: true, isForMe: false, preparerSigned: true, standing: null, ...given });
const signed = (given: Partial<SignedFact>) => paper({ standing: standing(given) });

describe('Today', () => {
  it('says that nothing presses when nothing does, and presses for nothing', () => {
    for (const role of ROLES) expect(today({ role })).toEqual({ title: 'Nothing presses today', now: [], soon: [], mayCharge: true });
    expect(today({ papers: [signed({})] })).toMatchObject({ now: [], soon: [] });
  });

  it('leads a new school through its first steps, each until it is done', () => {
    expect(ids({ role: 'safety-officer', setUp: { people: 1, sites: 0, packs: 0, papers: 0 } })).toEqual({ now: [], soon: ['first-people', 'first-place', 'first-packs', 'first-paper'] });
    expect(ids({ role: 'helper', setUp: { people: 1, sites: 0, packs: 0, papers: 0 } }).soon).toEqual([]);
    expect(today({ setUp: { people: 2, sites: 1, packs: 0, papers: 0 } }).title).toBe('What to do first');
  });

  it('puts packs of which nobody knows where they lie before everything, for every role', () => {
    for (const role of ROLES) {
      const { now } = today({ role, packs: [pack('W-19', 'say where')], papers: [signed({ force: 'suspended', reason: 'Smoke.' })] });
      expect(now[0]).toMatchObject({ id: 'packs-say-where', href: '/packs/W-19' });
      expect(now[0]?.why).toContain('everybody away, out, alarm, call');
    }
  });

  it('has packs collected by those who may hand them over, and names them together', () => {
    const packs = [pack('W-05', 'waits too long'), pack('W-19', 'waits too long'), pack('W-20', 'waits', 'Isolated today')];
    expect(ids({ packs })).toEqual({ now: ['packs-waiting-long'], soon: ['packs-waiting'] });
    expect(ids({ role: 'helper', packs })).toEqual({ now: [], soon: [] });
    expect(today({ packs }).now[0]?.title).toBe('Have W-05 and W-19 collected');
  });

  it('shows each paper on its way to whoever has to act, and to nobody else', () => {
    expect(ids({ papers: [paper({ state: 'returned' })] }).now).toEqual(['returned-v1']);
    expect(ids({ papers: [paper({ state: 'returned', isMine: false })] }).now).toEqual([]);
    expect(ids({ role: 'safety-officer', papers: [paper({ state: 'with-officer', isMine: false, isForMe: true })] }).now).toEqual(['check-v1']);
    expect(ids({ role: 'safety-officer', papers: [paper({ state: 'with-officer', isMine: false, isForMe: true, preparerSigned: false })] }).now).toEqual([]);
    expect(ids({ papers: [paper({ state: 'with-officer', preparerSigned: false })] }).now).toEqual(['sign-again-v1']);
    expect(ids({ papers: [paper({ state: 'draft' })] })).toEqual({ now: [], soon: ['draft-v1'] });
    expect(ids({ role: 'helper', papers: [paper({ state: 'returned' })] })).toEqual({ now: [], soon: [] });
  });

  it('says one thing of each signed paper, the gravest, and never that it holds beside that it does not', () => {
    const all = { drifts: ['The signed paper covers 24 packs, you have 26.'], reason: 'Incident 3', daysLeft: 3, acceptances: [{ stop: 'No drill', until: '1 November', daysLeft: -2 }] };
    expect(ids({ papers: [signed({ ...all, force: 'suspended' })] })).toEqual({ now: ['suspended-v1'], soon: [] });
    expect(ids({ papers: [signed({ ...all, force: 'run out' })] })).toEqual({ now: ['run-out-v1'], soon: [] });
    expect(ids({ papers: [signed({ ...all, force: 'review asked' })] })).toEqual({ now: ['review-v1'], soon: [] });
    expect(today({ papers: [signed({ ...all, force: 'review asked' })] }).now[0]?.why).toContain('covers 24 packs');
    expect(ids({ papers: [signed(all)] })).toEqual({ now: ['acceptance-v1'], soon: [] });
    expect(ids({ papers: [signed({ ...all, acceptances: [] })] })).toEqual({ now: ['drift-v1'], soon: [] });
    expect(ids({ papers: [signed({ daysLeft: 26 })] })).toEqual({ now: [], soon: ['review-date-v1'] });
    expect(ids({ papers: [signed({ daysLeft: 31 })] })).toEqual({ now: [], soon: [] });
  });

  it('stops charging while a paper is suspended, has run out, or rests on what has ended, and only then', () => {
    const mayCharge = (given: Partial<SignedFact>) => today({ papers: [signed(given)] }).mayCharge;
    expect([mayCharge({}), mayCharge({ force: 'review asked' }), mayCharge({ drifts: ['x'] })]).toEqual([true, true, true]);
    expect([mayCharge({ force: 'suspended' }), mayCharge({ force: 'run out' }), mayCharge({ acceptances: [{ stop: 's', until: 'u', daysLeft: -1 }] })]).toEqual([false, false, false]);
  });

  it('tells a helper, who reads no papers, when one does not hold', () => {
    expect(ids({ role: 'helper', papers: [signed({ force: 'suspended' })] }).now).toEqual(['no-charging-v1']);
    expect(ids({ role: 'helper', papers: [signed({ force: 'review asked' })] }).now).toEqual(['ask-first-v1']);
    expect(ids({ role: 'helper', papers: [signed({ drifts: ['x'] })] }).now).toEqual([]);
  });

  it('asks the officer to look again, and the others to ask first', () => {
    const papers = [signed({ force: 'review asked', reason: 'Incident 3: A pack puffed up' })];
    const titles = (role: Role) => today({ role, papers }).now[0]?.title;
    expect(titles('safety-officer')).toBe('Look at “Hall”, version 1 again');
    expect(titles('organiser')).toBe('Ask before anybody charges: “Hall”, version 1 is under review');
  });

  it('lets your own overdue action press, and any that settles a stop; those of others wait', () => {
    const action = (id: string, given: object) => ({ id, title: id, owner: 'Caretaker', isMine: false, due: '20 November 2026', daysLeft: -5, ofStop: false, ...given });
    const actions = [action('mine', { isMine: true }), action('stop', { ofStop: true }), action('other', {}), action('near', { isMine: true, daysLeft: 3 }), action('far', { isMine: true, daysLeft: 30 })];
    expect(ids({ actions })).toEqual({ now: ['action-mine', 'action-stop'], soon: ['actions-of-others', 'action-near'] });
    expect(ids({ role: 'helper', actions })).toEqual({ now: ['action-mine'], soon: ['action-near'] });
  });

  it('shows incidents to the officer alone, and presses for those nobody has looked at', () => {
    const incidents = [{ id: 'i', name: 'incident 3: a pack puffed up', state: 'recorded' as const, daysOpen: 1 }, { id: 'j', name: 'incident 2', state: 'in-review' as const, daysOpen: 4 }];
    expect(ids({ role: 'safety-officer', incidents })).toEqual({ now: ['incident-i'], soon: ['incident-j'] });
    expect(ids({ incidents })).toEqual({ now: [], soon: [] });
  });

  it('presses for a session that nobody closed, not for one that goes on', () => {
    const session = { id: 's', place: 'Hall', state: 'open' as const, began: 'today', hoursAgo: 1, found: [] };
    expect(ids({ sessions: [session] })).toEqual({ now: [], soon: ['session-s'] });
    expect(ids({ sessions: [{ ...session, hoursAgo: 20 }] })).toEqual({ now: ['session-s'], soon: [] });
    expect(today({ sessions: [{ ...session, state: 'stopped', found: ['a way out is not clear'] }] }).soon[0]?.why).toContain('Nobody charges or flies');
    expect(ids({ sessions: [{ ...session, state: 'closed' }] })).toEqual({ now: [], soon: [] });
  });

  it('counts what presses in its title', () => {
    expect(today({ packs: [pack('W-19', 'say where')] }).title).toBe('One thing needs you now');
    expect(today({ packs: [pack('W-19', 'say where'), pack('W-05', 'wrong place')] }).title).toBe('Two things need you now');
  });
});

it('lists names and days as people say them', () => {
  expect(listed(['W-01'])).toBe('W-01');
  expect(listed(['W-01', 'W-02', 'W-03'])).toBe('W-01, W-02 and W-03');
  expect(listed(['a', 'b', 'c', 'd', 'e', 'f'])).toBe('a, b, c and 3 others');
  expect([daysWords(0), daysWords(1), daysWords(-5)]).toEqual(['today', 'in 1 day', '5 days ago']);
});

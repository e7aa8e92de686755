import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { addFollowUp, closeIncident, openEnds, reopenIncident } from '@/lib/incidents/close-incident';
import { contradictsAssessment } from '@/lib/incidents/contradicts';
import { correctIncident } from '@/lib/incidents/correct-incident';
import { factsNow } from '@/lib/incidents/facts';
import { LIKELY_RISKS, likelyRisk } from '@/lib/incidents/likely-risk';
import { recordForEngine } from '@/lib/incidents/record-for-engine';
import { type FollowUp, type IncidentStanding, incidentStateOf, riskOf } from '@/lib/incidents/standing';
import { factsForTest } from '@/tests/support/incident-for-tests';

const said = (kind: FollowUp['kind'], text = 'x'): FollowUp => ({ kind, text, byName: 'R. O.', at: new Date(0) });
const whole: IncidentStanding = { state: 'in-review', facts: factsForTest(), followUps: [said('cause'), said('risk', 'none')], actions: 1, packsUnplaced: [] };

describe('closing', () => {
  it('is possible when everything is known', () => { expect(closeIncident(whole, 'done')).toEqual({ ok: true, change: { to: 'closed', followUp: { kind: 'closed', text: 'done' } } }); });

  it.each<[string, Partial<IncidentStanding>]>([
    ['the cause', { followUps: [said('risk')] }],
    ['an action', { actions: 0 }],
    ['the risk', { followUps: [said('cause')] }],
    ['whether anybody was hurt', { facts: factsForTest({ hurt: 'not-sure' }) }],
    ['whether anybody breathed smoke', { facts: factsForTest({ breathed: 'not-sure' }) }],
    ['where a pack is', { packsUnplaced: ['W-11'] }],
  ])('is refused without %s, by one reason', (_, given) => {
    const decision = closeIncident({ ...whole, ...given }, 'done');
    expect(decision.ok ? [] : decision.why).toHaveLength(1);
  });

  it('takes what was done at once for an action', () => { expect(openEnds({ ...whole, actions: 0, followUps: [...whole.followUps, said('measure')] })).toEqual([]); });

  it('happens once, and what is closed takes nothing more until it is opened again', () => {
    const closed = { ...whole, state: 'closed' as const };
    expect(closeIncident(closed, 'again').ok).toBe(false);
    expect(addFollowUp(closed, { kind: 'note', text: 'x' }, true).ok).toBe(false);
    expect(correctIncident(closed, 'hurt', 'yes').ok).toBe(false);
    expect(reopenIncident(closed, 'why')).toMatchObject({ ok: true, change: { to: 'in-review' } });
    expect(reopenIncident(whole, 'why').ok).toBe(false);
  });
});

describe('a follow-up', () => {
  it('begins the review when it is the officer’s', () => {
    const state = (byOfficer: boolean) => { const decision = addFollowUp({ state: 'recorded' }, { kind: 'note', text: 'x' }, byOfficer); return decision.ok && decision.change.to; };
    expect([state(true), state(false)]).toEqual(['in-review', 'recorded']);
  });

  it('that names the risk counts the last time', () => { expect([riskOf([]), riskOf([said('risk', 'none'), said('cause'), said('risk', 'store-full')])]).toEqual([null, 'store-full']); });
});

describe('a correction', () => {
  it('to the same is none, in whichever order a list is', () => {
    const facts = factsForTest({ kinds: ['fire', 'injury'] });
    expect(correctIncident({ state: 'recorded', facts }, 'kinds', ['injury', 'fire']).ok).toBe(false);
    expect(correctIncident({ state: 'recorded', facts }, 'kinds', ['injury']).ok).toBe(true);
  });

  it('adds packs that are new, and those of which it is now known that they took part', () => {
    const facts = factsForTest({ packs: [{ label: 'W-1', part: 'nearby' }, { label: 'W-2', part: 'involved' }] });
    const decision = correctIncident({ state: 'recorded', facts }, 'packs', [{ label: 'w-1', part: 'involved' }, { label: 'W-2', part: 'nearby' }, { label: 'W-3', part: 'nearby' }]);
    expect(decision.ok && decision.change.packsAdded).toEqual([{ label: 'w-1', part: 'involved' }, { label: 'W-3', part: 'nearby' }]);
  });

  it('is taken in by its number, whatever the order they come in', () => {
    const now = factsNow(factsForTest(), [{ number: 2, field: 'hurt', after: 'yes' }, { number: 1, field: 'hurt', after: 'not-sure' }, { number: 3, field: 'persons', after: 2 }]);
    expect(now).toEqual(factsForTest({ hurt: 'yes' }));
  });

  it('of another shape is not passed over', () => { expect(() => factsNow(factsForTest(), [{ number: 1, field: 'hurt', after: 'perhaps' }])).toThrow(); });
});

describe('a signed assessment', () => {
  it.each(['swelling', 'heat', 'smoke-or-venting', 'fire', 'short-circuit', 'smell-or-leak', 'electric-shock', 'injury'] as const)('is contradicted by %s', (kind) => {
    expect(contradictsAssessment(factsForTest({ kinds: [kind] }))).toBe(true);
  });

  it('foresees a hard hit, as long as nobody was harmed for sure', () => {
    expect(contradictsAssessment(factsForTest({ kinds: ['impact', 'drone-hit', 'near-miss'] }))).toBe(false);
    expect(contradictsAssessment(factsForTest({ kinds: ['near-miss'], breathed: 'not-sure' }))).toBe(true);
    expect(contradictsAssessment(factsForTest({ kinds: ['drone-hit'], hurt: 'yes' }))).toBe(true);
  });
});

describe('the record for the engine', () => {
  const scenarios = edition2.scenarios.map(({ id, exposureBase }) => ({ id, exposureBase }));
  const at = (day: string) => ({ at: `${day}T12:00:00.000Z`, known: true });
  const logged = { from: new Date('2026-09-01T00:00:00Z'), to: new Date('2026-12-31T00:00:00Z'), byBase: { watchedCharges: 3000, flights: 900 } };
  const burned = { facts: factsForTest({ kinds: ['fire'], when: at('2026-10-01') }), risk: null };

  it('knows every scenario of its table in the content', () => {
    const ids = new Set(scenarios.map(({ id }) => id));
    expect(LIKELY_RISKS.filter((risk) => !ids.has(risk))).toEqual([]);
  });

  it('counts events in the scenario’s own exposure, none too', () => {
    expect(recordForEngine(scenarios, [burned, burned], logged)).toEqual({
      'charge-runaway': { events: 2, exposure: 3000 }, 'over-discharge': { events: 0, exposure: 900 }, 'rotor-strike': { events: 0, exposure: 900 },
    });
  });

  it('takes the silence of a log for knowledge only where the form itself would have named the risk', () => {
    expect(recordForEngine(scenarios, [burned], logged)['arena-breach']).toBeUndefined();
    expect(recordForEngine(scenarios, [{ ...burned, risk: 'arena-breach' }], logged)['arena-breach']).toEqual({ events: 1, exposure: 900 });
  });

  it('goes by the officer where the officer has said, and leaves out what belongs to none', () => {
    const record = recordForEngine(scenarios, [{ ...burned, risk: 'none' }, { ...burned, risk: 'rotor-strike' }], logged);
    expect([record['charge-runaway']?.events, record['rotor-strike']?.events]).toEqual([0, 1]);
  });

  it('counts nothing outside of the period, and no rate without an exposure', () => {
    expect(recordForEngine(scenarios, [{ ...burned, facts: { ...burned.facts, when: at('2026-08-31') } }], logged)['charge-runaway']).toEqual({ events: 0, exposure: 3000 });
    expect(recordForEngine(scenarios, [burned], { ...logged, byBase: { watchedCharges: 0 } })).toEqual({});
  });

  it('takes no near miss for an event', () => { expect(likelyRisk(factsForTest({ kinds: ['near-miss'] }))).toBeNull(); });

  it('takes a fire in the store for one, and a swollen pack there for another', () => {
    expect([likelyRisk(factsForTest({ doing: 'stored', kinds: ['swelling', 'fire'] })), likelyRisk(factsForTest({ doing: 'stored' }))]).toEqual(['store-runaway', 'store-full']);
  });
});

it('a state that this program does not write is not read', () => { expect(() => incidentStateOf('lost')).toThrow(); });

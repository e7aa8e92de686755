import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';

/** The charging scenarios that share one list of reaches in the review. */
const CHARGING = ['charge-runaway', 'charge-after-crash', 'wrong-charge-setting'] as const;
const charging = (branch: string, reach: number): readonly string[] => CHARGING.map((scenario) => `${scenario}/${branch} ${reach}`);
/** The review knew no charge with nobody there; that scenario repeats reaches by our judgement. */
const OURS = 'charge-unwatched';

/** Role, tier, PFD, error factor, hours, money band, and reach by scenario and branch: our judgement, as the review of the first edition gives them. */
const ADDED: readonly [string, string, string, number, number, number, number, readonly string[]][] = [
  ['building-alarm', 'mitigate', 'engineer', 0.15, 3, 2, 3, [...charging('smoke', 0.2), ...charging('smoke-large', 0.6), ...charging('spread', 0.3), 'store-runaway/smoke 0.3', 'store-runaway/smoke-large 0.5', 'store-runaway/spread 0.3', 'overloaded-circuit/smoke 0.4', 'isolated-left/smoke 0.3']],
  ['evac-help', 'mitigate', 'administer', 0.3, 3, 2, 0, [...charging('smoke', 0.15), ...charging('smoke-large', 0.15), 'store-runaway/smoke 0.1', 'crash-delayed-fire/smoke 0.1', 'overloaded-circuit/smoke 0.15']],
  ['sensitive-away', 'mitigate', 'administer', 0.3, 3, 1, 0, [...charging('smoke', 0.1), 'over-discharge/smoke 0.1', 'short-circuit/smoke 0.1']],
  ['no-parallel', 'prevent', 'eliminate', 0.1, 3, 1, 1, ['wrong-charge-setting 0.3', 'charge-runaway 0.15', 'charge-after-crash 0.1', 'short-circuit 0.15']],
  ['one-cell-type', 'prevent', 'substitute', 0.15, 3, 2, 0, ['wrong-charge-setting 0.6', 'charge-runaway 0.1']],
  ['known-source', 'prevent', 'substitute', 0.3, 3, 2, 2, ['charge-runaway 0.3', 'store-runaway 0.3', 'transit-fire 0.25', 'store-full 0.1', 'air-travel-breach 0.3']],
  ['kit-sound', 'prevent', 'engineer', 0.15, 3, 1, 2, ['overloaded-circuit 0.5', 'short-circuit 0.2', 'wrong-charge-setting 0.1', 'charge-runaway 0.1']],
  // the review calls it preventive and uses it as mitigating: the role follows the use
  ['leakage-guard', 'mitigate', 'engineer', 0.1, 3, 2, 3, ['overloaded-circuit/burn 0.5', 'overloaded-circuit/spread 0.2']],
  ['solder-rule', 'prevent', 'administer', 0.2, 3, 1, 0, ['short-circuit 0.25', 'untrained-handling 0.2']],
  ['no-charge-elsewhere', 'prevent', 'eliminate', 0.1, 3, 1, 0, ['untrained-handling 0.3', 'transit-fire 0.2', 'hot-vehicle 0.15', 'store-runaway 0.1']],
  ['not-alone', 'mitigate', 'administer', 0.3, 2, 2, 0, ['store-runaway/smoke 0.2', 'store-runaway/burn 0.4', 'isolated-left/burn 0.3', ...charging('burn', 0.1)]],
  ['air-not-shared', 'mitigate', 'engineer', 0.2, 3, 4, 2, [...charging('smoke-large', 0.3), 'store-runaway/smoke 0.2', 'store-runaway/smoke-large 0.3', 'overloaded-circuit/smoke 0.2']],
  ['hall-told', 'mitigate', 'administer', 0.4, 2, 1, 0, [...charging('smoke-large', 0.3), 'store-runaway/smoke-large 0.3', 'arena-breach/hit 0.1']],
  ['after-fire-plan', 'mitigate', 'administer', 0.4, 2, 1, 1, [...charging('programme', 0.3), 'store-runaway/programme 0.3', 'isolated-left/programme 0.3', ...charging('smoke', 0.05)]],
];

function usesOf(control: string): readonly string[] {
  return edition2.scenarios.filter(({ id }) => id !== OURS).flatMap(({ id, preventive, branches }) => [
    ...preventive.flatMap((use) => (use.control === control ? [`${id} ${use.reach}`] : [])),
    ...branches.flatMap((branch) => branch.mitigating.flatMap((use) => (use.control === control ? [`${id}/${branch.id} ${use.reach}`] : []))),
  ]).sort();
}
const question = (id: string) => edition2.questions.find((candidate) => candidate.id === id);
const optionSets = (id: string, option: string) => {
  const asked = question(id);
  return asked !== undefined && 'options' in asked ? asked.options.find((candidate) => candidate.id === option)?.sets : undefined;
};

describe('a control the first edition lacked', () => {
  it.each(ADDED)('%s', (id, role, tier, pfd, errorFactor, hours, moneyBand, uses) => {
    const control = edition2.controls.find((candidate) => candidate.id === id);
    expect(control).toMatchObject({ role, tier, pfd, errorFactor, effort: { hours, moneyBand }, kind: 'our judgement' });
    expect(usesOf(id)).toEqual([...uses].sort());
  });
});

describe('the other additions', () => {
  it.each([
    ['people who need help are asked for once a season', 'people-needs', 'nobody', { controls: {}, inputs: { needHelp: 0, needAir: 0 } }],
    ['detection switched off at the table', 'alarm-charging', 'off', { controls: { 'smoke-alarm-charging': 'absent' }, inputs: { detectionOffCharging: 1 } }],
    ['detection switched off at the store', 'alarm-store', 'off', { controls: { 'smoke-alarm-store': 'absent' }, inputs: { detectionOffStore: 1 } }],
    ['detection switched off in the hall', 'arena-detection', 'off', { controls: {}, inputs: { detectionOffArena: 1 } }],
    ['sleepers and neighbours', 'store-neighbours', 'night', { controls: {}, inputs: { neighboursWhen: 'night' } }],
    ["the owner's leave", 'team-consent', 'no', { controls: {}, inputs: { ownerAgreed: 0, insurerTold: 0 } }],
    ['the table during lesson change', 'table-barrier', 'locked-room', { controls: { 'barrier-charging': 'in place' }, inputs: {} }],
    ['nobody in the holidays', 'store-check', 'term', { controls: { 'store-check': 'partly' }, inputs: { uncheckedDays: 56 } }],
    ['several packs on one output', 'routine-parallel', 'no', { controls: { 'no-parallel': 'absent' }, inputs: { packsPerOutput: 6 } }],
  ])('%s', (_, id, option, sets) => { expect(optionSets(id, option)).toEqual(sets); });

  it('where nobody needs help, the help that everybody needs is in place', () => {
    const as = edition2.questions.flatMap(({ id, hiddenAs }) => (hiddenAs === undefined ? [] : [`${id}: ${hiddenAs}`]));
    expect(as).toEqual(['people-help: in place', 'people-breathing: in place']);
  });

  it('the temperature of the room is a rule of the pack check', () => {
    expect(edition2.packLimits.rules.filter(({ measure }) => measure.toLowerCase().includes('ambient')).map(({ value }) => value).sort()).toEqual([40, 5]);
  });
});

describe('what an action moves besides its own state', () => {
  it('is named where a control and an input tell of the same thing', () => {
    const moves = edition2.controls.flatMap(({ id, moves: each = [] }) => each.map(({ input, to, only }) => `${id}: ${input} ${to} ${only}`));
    expect(moves).toEqual([
      'attended-charging: overnightCharging 0 always',
      'clear-space-charging: combustibleDistance 1 if lower',
      'clear-space-charging: clearHeight 1.5 if lower',
      'exits-clear: exits 2 if lower',
      'store-check: uncheckedDays 7 if higher',
      'store-cabinet: storageCombustibleDistance 1 if lower',
      'store-cabinet: storageClearHeight 1 if lower',
      'store-away: storageOutdoor 1 always',
      'no-parallel: packsPerOutput 1 always',
    ]);
  });
});

describe('physically wrong points of the first edition', () => {
  const severity = (scenario: string, branch: string) =>
    edition2.scenarios.find(({ id }) => id === scenario)?.branches.find(({ id }) => id === branch)?.severity;
  const formula = (id: string) => edition2.exposures.find((exposure) => exposure.id === id)?.formula;

  it('a fire in a bin has no arena and no spectators', () => {
    expect([severity('waste-fire', 'smoke'), severity('waste-fire', 'spread')]).toMatchObject([{ fixed: 3 }, { fixed: 3 }]);
  });

  it('an overheated outlet burns like one pack, not like all on the table', () => {
    expect(severity('overloaded-circuit', 'spread')).toMatchObject({ packs: 'one' });
  });

  it('an overnight charge has nobody of the session in the room', () => {
    expect([formula('watchedCharges'), formula('unwatchedCharges')]).toEqual(['charges * (1 - overnightCharging * overnightShare)', 'charges * overnightCharging * overnightShare']);
    expect(severity('charge-unwatched', 'smoke')).toMatchObject({ near: false, foundLater: true, sharedBy: ['neighboursCharging'] });
  });

  it('there are no more warm trips than trips, and no flights where nobody flies', () => {
    expect([formula('warmPackTrips'), formula('flights')]).toEqual(['min(warmTrips, roadTrips) * packsPerTrip', 'packs * sessions * chargesPerPackSession * flies']);
  });

  it('who goes by air is asked what packs travel in', () => {
    expect(question('travel-case')?.showIf).toEqual({ any: [{ input: 'roadTrips', op: '>', value: 0 }, { input: 'airTrips', op: '>', value: 0 }] });
  });
});

import { describe, expect, it } from 'vitest';
import { checkEvent, judgedLines, openLines } from '@/lib/events/check/check-event';
import type { CheckFacts } from '@/lib/events/check/facts';
import { NO_DETAILS } from '@/lib/events/details';
import { checkedPack, checkFactsForTest, EVENT_NOW } from '@/tests/support/event-for-tests';

const lines = (facts: CheckFacts) => openLines(judgedLines(checkEvent(facts), []));
const ids = (facts: CheckFacts): readonly string[] => lines(facts).map(({ id }) => id);
const line = (facts: CheckFacts, id: string) => checkEvent(facts).find((one) => one.id === id);

describe('the check before an event leaves', () => {
  it('passes when all is said and nothing speaks against it', () => {
    expect(ids(checkFactsForTest())).toEqual([]);
  });

  it('lets nothing pass that nobody knows', () => {
    const found = checkEvent(checkFactsForTest({ details: NO_DETAILS, people: null, spectators: null, packs: [checkedPack({ lastCheckAt: null, charge: null, energyWh: null })], site: { id: 's', kind: 'away', emergencyNumber: null, meetingPlace: null, hasOutdoorSpot: false, hasChargingArea: false } }));
    const open = found.filter(({ state }) => state !== 'ok').map(({ id }) => id);
    expect(open).toEqual(expect.arrayContaining(['place-people', 'place-spectators', 'place-energy', 'place-emergency', 'packs-unchecked', 'packs-energy', 'there-alarm', 'there-detection', 'there-hall', 'there-charging', 'there-spot', 'there-damaged', 'there-night', 'road-way']));
    expect(found.every(({ state, mend }) => (state === 'ok') === (mend === null))).toBe(true);
  });

  it('names a link where a line is mended, for every line that is open', () => {
    for (const { id, link } of lines(checkFactsForTest({ details: NO_DETAILS, adults: [], packs: [], assessment: null }))) expect(link, id).toMatch(/^\/(events|places|assessments)\//);
  });

  it('holds it against the assessment: none, suspended, run out, under review, ending too soon', () => {
    expect(line(checkFactsForTest({ assessment: null }), 'place-assessment')).toMatchObject({ state: 'failing', link: '/assessments/new?site=site-1', mayBeAccepted: true });
    expect(line(checkFactsForTest({ assessment: null, details: { charging: 'yes' } }), 'place-assessment')).toMatchObject({ mayBeAccepted: false });
    const held = checkFactsForTest().assessment;
    if (held === null) throw new Error('the test has no assessment');
    expect(line(checkFactsForTest({ assessment: { ...held, force: 'suspended' } }), 'place-assessment')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ assessment: { ...held, force: 'review asked' } }), 'place-assessment')).toMatchObject({ state: 'failing', mayBeAccepted: true });
    expect(line(checkFactsForTest({ assessment: { ...held, force: 'run out' }, details: { charging: 'yes' } }), 'place-assessment')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ assessment: { ...held, holdsUntil: '2026-12-04' } }), 'place-until')).toMatchObject({ state: 'failing' });
    expect(line(checkFactsForTest({ assessment: { ...held, endedAcceptances: ['No switch'] } }), 'place-assessment')).toMatchObject({ state: 'failing' });
  });

  it('holds it for this number of packs, this energy and these people, and not for one more', () => {
    const packs = (count: number) => Array.from({ length: count }, (_one, index) => checkedPack({ label: `W-${index}`, energyWh: 20 }));
    expect(ids(checkFactsForTest({ packs: packs(20) }))).toEqual([]);
    expect(ids(checkFactsForTest({ packs: packs(21) }))).toEqual(['place-packs', 'place-energy']);
    const rounded = Array.from({ length: 20 }, (_one, index) => checkedPack({ label: `W-${index}`, energyWh: 20.1 }));
    expect(line(checkFactsForTest({ packs: rounded }), 'place-energy')).toMatchObject({ state: 'ok', words: 'The assessment holds for the energy: 402 Wh, but for rounding the 400 Wh of the paper.' });
    expect(ids(checkFactsForTest({ people: 25 }))).toEqual(['place-people']);
    expect(ids(checkFactsForTest({ spectators: 61 }))).toEqual(['place-spectators']);
  });

  it('keeps damaged packs at home, and nobody can accept one', () => {
    expect(line(checkFactsForTest({ packs: [checkedPack({ state: 'isolated', damaged: true, stopped: 'it is isolated' })] }), 'packs-damaged')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ packs: [checkedPack({ stopped: 'swollen' })] }), 'packs-stopped')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ packs: [checkedPack({ state: 'retired', stopped: 'it is retired' })] }), 'packs-in-use')).toMatchObject({ state: 'failing', mayBeAccepted: false });
  });

  it('asks for a check within the limit of the school, held to now while the event is still to come', () => {
    const old = checkedPack({ lastCheckAt: new Date(EVENT_NOW.getTime() - 8 * 86_400_000) });
    expect(ids(checkFactsForTest({ packs: [old] }))).toEqual(['packs-checked']);
    expect(line(checkFactsForTest({ packs: [old] }), 'packs-checked')).toMatchObject({ mayBeAccepted: false });
    expect(ids(checkFactsForTest({ packs: [old], checkedWithinDays: 14 }))).toEqual([]);
  });

  it('asks for storage charge on the way, neither fuller nor lower, and not when nobody travels', () => {
    expect(ids(checkFactsForTest({ packs: [checkedPack({ charge: 'above' })] }))).toEqual(['packs-storage']);
    expect(ids(checkFactsForTest({ packs: [checkedPack({ charge: 'below' })] }))).toEqual(['packs-storage']);
    expect(line(checkFactsForTest({ packs: [checkedPack({ charge: null })] }), 'packs-storage')).toMatchObject({ state: 'not known', mayBeAccepted: false });
    const here = { id: 's', kind: 'own' as const, emergencyNumber: '000', meetingPlace: 'yard', hasOutdoorSpot: true, hasChargingArea: true };
    expect(ids(checkFactsForTest({ site: here, details: { way: 'none' }, packs: [checkedPack({ charge: 'above' })] }))).toEqual([]);
  });

  it('asks no agreement of our own hall, but a signed assessment that says what is in place there', () => {
    const here = { id: 's', kind: 'own' as const, emergencyNumber: '000', meetingPlace: 'yard', hasOutdoorSpot: true, hasChargingArea: true };
    expect(line(checkFactsForTest({ site: here }), 'there-agreed')).toMatchObject({ state: 'ok' });
    expect(line(checkFactsForTest({ site: here, assessment: null }), 'there-agreed')).toMatchObject({ state: 'not known' });
    expect(line(checkFactsForTest({ notAgreed: ['A spot outdoors'] }), 'there-agreed')).toMatchObject({ state: 'not known', words: 'The venue has not agreed yet: A spot outdoors.' });
  });

  it('takes only a whole yes on the road, and never lets packs be loaded unchecked', () => {
    expect(line(checkFactsForTest({ details: { case: 'partly' } }), 'road-case')).toMatchObject({ state: 'failing', mayBeAccepted: true });
    expect(line(checkFactsForTest({ details: { leads: 'not-sure' } }), 'road-leads')).toMatchObject({ state: 'not known' });
    expect(line(checkFactsForTest({ details: { twoCheck: 'no' } }), 'road-checked')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ details: { night: 'vehicle' } }), 'there-night')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ details: { way: 'none' } }), 'road-way')).toMatchObject({ state: 'failing' });
  });

  it('asks for somebody who may stop the match, with a number to be reached at', () => {
    expect(line(checkFactsForTest({ adults: [] }), 'people-stop')).toMatchObject({ state: 'failing', mayBeAccepted: false });
    expect(line(checkFactsForTest({ adults: [{ name: 'K. Marsh', parts: ['may-stop'], phone: null }] }), 'people-stop')).toMatchObject({ state: 'failing' });
  });
});

describe('a line that the officer let stand', () => {
  const facts = checkFactsForTest({ packs: [checkedPack({ state: 'watch', label: 'W-07' })] });
  const words = line(facts, 'packs-watch')?.words ?? '';
  const acceptance = { lineId: 'packs-watch', words, reason: 'wrap taped, adult carries it', byName: 'R. O.', at: EVENT_NOW };

  it('is no longer open, as long as it says the same', () => {
    expect(openLines(judgedLines(checkEvent(facts), [acceptance]))).toEqual([]);
    const more = checkFactsForTest({ packs: [checkedPack({ state: 'watch', label: 'W-07' }), checkedPack({ state: 'watch', label: 'W-08' })] });
    expect(openLines(judgedLines(checkEvent(more), [acceptance])).map(({ id }) => id)).toEqual(['packs-watch']);
  });

  it('stays open when nobody may accept it, whatever was written', () => {
    const damaged = checkFactsForTest({ packs: [checkedPack({ state: 'isolated', damaged: true, stopped: 'it is isolated' })] });
    const forged = { ...acceptance, lineId: 'packs-damaged', words: line(damaged, 'packs-damaged')?.words ?? '' };
    expect(openLines(judgedLines(checkEvent(damaged), [forged])).map(({ id }) => id)).toContain('packs-damaged');
  });
});

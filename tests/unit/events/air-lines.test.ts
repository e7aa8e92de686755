import { describe, expect, it } from 'vitest';
import { airLines } from '@/lib/events/check/air-lines';
import type { EventDetails } from '@/lib/events/details';
import type { CheckedPack } from '@/lib/events/check/facts';
import { AIR_RULES } from '@/lib/events/air-rules';
import { checkedPack, checkFactsForTest } from '@/tests/support/event-for-tests';

const FLIES: Partial<EventDetails> = { way: 'air', carrier: 'Tern Air, asked 20 November', carrierAsked: 'yes', cabinOnly: 'yes', terminals: 'yes', tested: 'yes', flyers: 4 };
const open = (packs: readonly CheckedPack[], details: Partial<EventDetails> = {}) => airLines(checkFactsForTest({ packs, details: { ...FLIES, ...details } })).filter(({ state }) => state !== 'ok');
const ids = (packs: readonly CheckedPack[], details?: Partial<EventDetails>) => open(packs, details).map(({ id }) => id);
const of = (energyWh: number | null): CheckedPack => checkedPack({ label: `${energyWh ?? 'unknown'} Wh`, energyWh });

describe('packs by air, against the published rules', () => {
  // TSA, 100 Wh or less: carry-on (REFERENCES F.2, read)
  it('lets spares up to 100 Wh fly in the cabin', () => {
    expect(ids([of(12.58), of(100)])).toEqual([]);
    expect(ids([of(100)], { cabinOnly: 'partly' })).toEqual(['air-cabin']);
  });

  // FAA PackSafe, 101 to 160 Wh: approval, at most two spares (REFERENCES F.2, a copy was read)
  it('asks for the carrier’s approval above 100 Wh, and for at most two a person', () => {
    expect(ids([of(100.1)])).toEqual(['air-approval']);
    expect(ids([of(160)], { approved: 'yes' })).toEqual([]);
    expect(ids([of(120), of(121), of(122)], { approved: 'yes', flyers: 1 })).toEqual(['air-spares']);
    expect(ids([of(120), of(121)], { approved: 'yes', flyers: 1 })).toEqual([]);
    expect(ids([of(120)], { approved: 'yes', flyers: null })).toEqual(['air-spares']);
  });

  // ICAO Technical Instructions 8;1, IATA DGR 2.3: above 160 Wh forbidden in baggage (REFERENCES F.2, from memory)
  it('lets nothing above 160 Wh fly, approved or not', () => {
    expect(ids([of(160.1)], { approved: 'yes' })).toEqual(['air-forbidden']);
  });

  // FAA PackSafe: damaged or recalled packs are not carried (REFERENCES F.2, read in summary)
  it('never lets a damaged or doubtful pack fly', () => {
    expect(ids([checkedPack({ damaged: true, state: 'isolated', stopped: 'it is isolated' })])).toEqual(['air-damaged']);
    expect(ids([checkedPack({ state: 'watch' })])).toEqual(['air-damaged']);
  });

  it('takes a pack of unknown energy for none that may fly', () => {
    expect(ids([of(null)])).toEqual(['air-energy']);
  });

  it('asks the carrier, and names it', () => {
    expect(ids([of(12)], { carrier: null })).toEqual(['air-carrier']);
    expect(ids([of(12)], { carrierAsked: 'not-sure' })).toEqual(['air-carrier']);
  });

  // The content's stop `air-rules` is never accepted.
  it('lets the officer accept none of it', () => {
    const all = open([of(200), of(120), of(null), checkedPack({ damaged: true })], { carrier: null, cabinOnly: null, terminals: 'no', tested: null, flyers: null });
    expect(all.map(({ id }) => id)).toEqual(['air-damaged', 'air-forbidden', 'air-energy', 'air-approval', 'air-spares', 'air-cabin', 'air-terminals', 'air-tested', 'air-carrier']);
    expect(all.some(({ mayBeAccepted }) => mayBeAccepted)).toBe(false);
  });

  it('asks nothing of it when nobody flies', () => {
    expect(airLines(checkFactsForTest({ packs: [of(500)], details: { way: 'road' } }))).toEqual([]);
  });

  it('says of every rule what it rests on', () => {
    for (const { id, source, read } of AIR_RULES) expect([id, source.length > 5, ['read', 'a copy was read', 'from memory'].includes(read)]).toEqual([id, true, true]);
  });
});

import { airClass, SPARES_WITH_APPROVAL } from '@/lib/core/battery/air-carriage';
import type { WattHours } from '@/lib/units/quantity';
import { goesByAir } from '../details';
import type { CheckedPack, CheckFacts } from './facts';
import { type CheckLine, fails, labels, type LineWords, passes, saidLine, unknown } from './line';

/**
 * By air: each pack by its class, in the cabin, contacts covered one by one, none damaged, the carrier asked. Rules with
 * their editions in `AIR_RULES`. Nothing here can be accepted: the content's stop `air-rules` lets nobody.
 */
export function airLines(facts: CheckFacts): readonly CheckLine[] {
  const { details } = facts;
  if (!goesByAir(details)) return [];
  const line = (id: string): LineWords => ({ id, group: 'air', mayBeAccepted: false, link: `/events/${facts.eventId}/travel` });
  const packs = (id: string): LineWords => ({ ...line(id), link: `/events/${facts.eventId}/packs` });
  return [
    damaged(packs('air-damaged'), facts.packs),
    tooLarge(packs('air-forbidden'), facts.packs),
    energyKnown(packs('air-energy'), facts.packs),
    ...approval(line('air-approval'), facts),
    saidLine(line('air-cabin'), details.cabinOnly, { good: 'All packs fly in the cabin, none in checked baggage.', open: 'Nobody has said where packs fly.', bad: 'some packs are in checked baggage.', mend: 'Pack them all for the cabin; when a cabin bag is taken at the gate, they come out of it.' }),
    saidLine(line('air-terminals'), details.terminals, { good: 'Contacts are covered pack by pack.', open: 'Nobody has said whether contacts are covered pack by pack.', bad: 'contacts are not covered pack by pack.', mend: 'Retail packing, tape over the contacts, or a bag of its own for each.' }),
    saidLine(line('air-tested'), details.tested, { good: 'The test summary of their type (UN 38.3) is at hand.', open: 'Nobody knows whether the type of pack was tested (UN 38.3).', bad: 'there is no test summary (UN 38.3) of their type.', mend: 'Ask the seller for it; packs without it stay home.' }),
    saidLine(line('air-carrier'), details.carrier === null ? null : details.carrierAsked, { good: `The carrier was asked${details.carrier === null ? '' : `: ${details.carrier}`}.`, open: 'The carrier has not been asked.', bad: 'the carrier has not been asked for all flights.', mend: 'Ask every carrier of the journey, and write down which and when. Its own rules come first.' }),
  ];
}

const named = (packs: readonly CheckedPack[]): string => labels(packs.map(({ label }) => label));
const classOf = ({ energyWh }: CheckedPack) => (energyWh === null ? null : airClass(energyWh as WattHours));

function damaged(line: LineWords, packs: readonly CheckedPack[]): CheckLine {
  const found = packs.filter(({ damaged: isDamaged, state, stopped }) => isDamaged || state !== 'in-use' || stopped !== null);
  return found.length === 0 ? passes(line, 'No damaged or doubtful pack flies.') : fails(line, `Damaged or doubtful packs never fly: ${named(found)}.`, 'Take them off the list.');
}

function tooLarge(line: LineWords, packs: readonly CheckedPack[]): CheckLine {
  const found = packs.filter((pack) => classOf(pack) === 'forbidden');
  return found.length === 0 ? passes(line, 'No pack is above 160 Wh.') : fails(line, `Above 160 Wh, which does not fly as baggage: ${named(found)}.`, 'Take them off the list.');
}

function energyKnown(line: LineWords, packs: readonly CheckedPack[]): CheckLine {
  const found = packs.filter((pack) => classOf(pack) === null);
  return found.length === 0 ? passes(line, 'The energy of each pack is known.') : unknown(line, `Not known what class these are: ${named(found)}.`, 'Write the printed energy at the pack; without it, it does not fly.');
}

function approval(line: LineWords, { packs, details }: CheckFacts): readonly CheckLine[] {
  const found = packs.filter((pack) => classOf(pack) === 'approval');
  if (found.length === 0) return [passes(line, 'No pack needs the carrier’s approval: all are up to 100 Wh, or not among those that fly.')];
  const spares: LineWords = { ...line, id: 'air-spares' };
  const agreed = saidLine(line, details.approved, { good: `The carrier has approved ${named(found)} in writing.`, open: `From 100 to 160 Wh, which needs the carrier’s approval: ${named(found)}.`, bad: `the carrier has not approved ${named(found)}.`, mend: 'Have it in writing, with the number of packs, or leave them at home.' });
  if (details.flyers === null) return [agreed, unknown(spares, 'Nobody has said how many people fly.', 'Say it: each may carry at most two packs above 100 Wh.')];
  const most = details.flyers * SPARES_WITH_APPROVAL;
  return [agreed, found.length <= most ? passes(spares, `${found.length} packs above 100 Wh for ${details.flyers} people who fly: at most two each.`) : fails(spares, `${found.length} packs above 100 Wh are more than two for each of ${details.flyers} people who fly.`, 'Take fewer of them.')];
}

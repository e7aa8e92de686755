import { DAY_MS } from '@/lib/units/time';
import { goesByAir, goesByRoad } from '../details';
import type { CheckedPack, CheckFacts } from './facts';
import { type CheckLine, fails, labels, type LineWords, passes, unknown } from './line';

/** The packs: none damaged, none stopped, each checked lately, at storage charge for the way. */
export function packLines(facts: CheckFacts): readonly CheckLine[] {
  if (facts.packs.length === 0) return [fails(lineOf(facts, 'packs-chosen', false), 'No pack is chosen.', 'Pick the packs that go along.')];
  const travels = goesByRoad(facts.details) || goesByAir(facts.details);
  return [damaged(facts), notInUse(facts), stopped(facts), watched(facts), unchecked(facts), checkedLately(facts), ...(travels ? [storage(facts)] : []), energy(facts)];
}

const lineOf = ({ eventId }: CheckFacts, id: string, mayBeAccepted: boolean): LineWords => ({ id, group: 'packs', mayBeAccepted, link: `/events/${eventId}/packs` });
const named = (packs: readonly CheckedPack[]): string => labels(packs.map(({ label }) => label));
const isAre = (packs: readonly CheckedPack[]): string => (packs.length === 1 ? 'is' : 'are');

/** Never accepted: a damaged pack stays where it is, or leaves by the rules for damaged batteries (REFERENCES F.2, F.3). */
function damaged(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-damaged', false);
  const found = facts.packs.filter((pack) => pack.damaged);
  return found.length === 0 ? passes(line, 'No pack is isolated, and no last check found a sign of damage.') : fails(line, `Damaged or suspected: ${named(found)}.`, 'Take them off the list. They stay home, apart, and leave only as the collector says.');
}

function notInUse(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-in-use', false);
  const found = facts.packs.filter(({ state, damaged: isDamaged }) => !isDamaged && state !== 'in-use' && state !== 'watch');
  return found.length === 0 ? passes(line, 'No pack is retired or handed over.') : fails(line, `No longer in use: ${named(found)}.`, 'Take them off the list.');
}

function stopped(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-stopped', false);
  const found = facts.packs.filter((pack) => isHere(pack) && pack.lastCheckAt !== null && pack.stopped !== null);
  if (found.length === 0) return passes(line, 'No last check says that a pack must not be taken along.');
  const [first] = found;
  return fails(line, `By the last check not to be taken along: ${named(found)}${first === undefined || first.stopped === null ? '' : ` (${first.stopped})`}.`, 'Take them off the list, or put right what was found and check them again.');
}

function watched(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-watch', true);
  const found = facts.packs.filter(({ state }) => state === 'watch');
  return found.length === 0 ? passes(line, 'No pack is under watch.') : fails(line, `Under watch: ${named(found)}.`, 'Leave them at home, or let an adult settle what they are watched for.');
}

function unchecked(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-unchecked', false);
  const found = facts.packs.filter((pack) => isHere(pack) && pack.lastCheckAt === null);
  return found.length === 0 ? passes(line, 'Every pack has been checked.') : unknown(line, `Never checked: ${named(found)}.`, `Check ${found.length === 1 ? 'it' : 'each of them'}, or take ${found.length === 1 ? 'it' : 'them'} off the list.`);
}

/** Held to now, so that a file can be signed ahead; from the first day on to the beginning of the event. */
function checkedLately(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-checked', false);
  const at = Math.min(facts.now.getTime(), facts.startsAt.getTime());
  const found = facts.packs.filter((pack) => isHere(pack) && pack.lastCheckAt !== null && at - pack.lastCheckAt.getTime() > facts.checkedWithinDays * DAY_MS);
  const limit = `${facts.checkedWithinDays} days`;
  return found.length === 0 ? passes(line, `No last check is older than ${limit}.`) : fails(line, `Not checked within ${limit}: ${named(found)}.`, 'Check them again before they are packed.');
}

function storage(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-storage', true);
  const here = facts.packs.filter(isHere);
  const of = (charge: CheckedPack['charge']): readonly CheckedPack[] => here.filter((pack) => pack.charge === charge);
  const [above, below, open] = [of('above'), of('below'), of(null)];
  if (above.length > 0 || below.length > 0) return fails(line, [...(above.length > 0 ? [`Fuller than storage charge: ${named(above)}.`] : []), ...(below.length > 0 ? [`Lower than storage charge: ${named(below)}.`] : [])].join(' '), 'Bring them to storage charge, 3.7 to 3.85 V a cell, and check them again.');
  if (open.length > 0) return unknown({ ...line, mayBeAccepted: false }, `Nobody has measured the charge of ${named(open)}.`, 'Measure the cells in a pack check.');
  return passes(line, 'By their last checks all are at storage charge.');
}

function energy(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'packs-energy', false);
  const found = facts.packs.filter(({ energyWh }) => energyWh === null);
  return found.length === 0 ? passes(line, 'The energy of every pack is known.') : unknown(line, `The energy of ${named(found)} ${isAre(found)} not known.`, 'Write the printed energy at the pack.');
}

const isHere = ({ state }: CheckedPack): boolean => state === 'in-use' || state === 'watch';

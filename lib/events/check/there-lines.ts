import type { CheckFacts } from './facts';
import { type CheckLine, fails, type LineWords, passes, unknown } from './line';

/** At the venue: its alarm, who shares it, detection, charging, what becomes of a damaged pack, the night. */
export function thereLines(facts: CheckFacts): readonly CheckLine[] {
  return [alarm(facts), detection(facts), hall(facts), ...charging(facts), spot(facts), damaged(facts), ...night(facts), agreed(facts)];
}

const lineOf = ({ eventId }: CheckFacts, id: string, mayBeAccepted: boolean): LineWords => ({ id, group: 'there', mayBeAccepted, link: `/events/${eventId}/venue` });
const ASK = 'Ask the venue; its own staff can say it by a link.';

function alarm(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'there-alarm', false);
  return facts.details.alarm === null ? unknown(line, 'Nobody has written down how the venue’s own alarm is set off.', ASK) : passes(line, `The venue’s own alarm: ${facts.details.alarm}`);
}

function detection(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'there-detection', true);
  switch (facts.details.detection) {
    case 'on': return passes(line, 'Smoke detection stays on all the time.');
    case 'off': return fails(line, 'Smoke detection is covered or off for a time.', 'Have it stay on, or have somebody on watch and packs out of that room while it is off.');
    case 'none': return fails(line, 'There is no smoke detection.', 'Choose a room with it, or have somebody on watch as long as packs are there.');
    case 'not-sure':
    case null: return unknown({ ...line, mayBeAccepted: false }, 'Nobody knows whether smoke detection stays on.', ASK);
  }
}

function hall(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'there-hall', true);
  switch (facts.details.hall) {
    case 'nobody': return passes(line, 'Nobody else is in the building.');
    case 'told': return passes(line, 'Whoever shares the building was told.');
    case 'not-told': return fails(line, 'Others are in the building, and nobody has told them.', 'Tell them: packs are here, they leave at the alarm, whom to call.');
    case 'not-sure':
    case null: return unknown({ ...line, mayBeAccepted: false }, 'Nobody knows who else is in the building.', ASK);
  }
}

function charging(facts: CheckFacts): readonly CheckLine[] {
  const { details, site } = facts;
  const line = lineOf(facts, 'there-charging', false);
  if (details.charging === 'no') return [passes(line, 'Nothing is charged there.')];
  if (details.charging !== 'yes') return [unknown(line, 'Nobody has said whether packs are charged there.', 'Say it; most of what is asked of the venue hangs on it.')];
  const place = details.chargingPlace !== null || site.hasChargingArea;
  const limits = details.chargingAtOnce !== null && details.chargingCircuit !== null;
  return [
    place ? passes(line, 'The place for charging is named.') : unknown(line, 'Nobody has named the place for charging.', ASK),
    limits
      ? passes(lineOf(facts, 'there-limits', false), `At most ${details.chargingAtOnce ?? 0} at once, on ${details.chargingCircuit ?? ''}.`)
      : unknown(lineOf(facts, 'there-limits', true), 'Nobody has said how many packs may charge at once, and on which circuit.', ASK),
  ];
}

function spot(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'there-spot', false);
  const known = facts.site.hasOutdoorSpot || (facts.details.damaged === 'venue-spot' && facts.details.damagedPlace !== null);
  return known ? passes(line, 'A spot outdoors for suspect packs is named.') : unknown(line, 'No spot outdoors is named where a suspect pack waits.', `${ASK} It is away from the building, its doors and windows.`);
}

/** A damaged pack does not come back in the vehicle: it stays, or leaves as the collector says. Never accepted otherwise. */
function damaged(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'there-damaged', false);
  switch (facts.details.damaged) {
    case 'venue-spot': return passes(line, 'A damaged pack stays at the venue’s outdoor spot until its collection.');
    case 'collector': return passes(line, 'A damaged pack leaves as the collector says.');
    case 'not-sure':
    case null: return unknown(line, 'Nobody has said what becomes of a pack that is damaged there.', 'Agree it with the venue and the collection point. It never rides back with you.');
  }
}

function night(facts: CheckFacts): readonly CheckLine[] {
  const { details, manyDays } = facts;
  const line = lineOf(facts, 'there-night', false);
  switch (details.night) {
    case 'no-night': return [manyDays ? passes(line, 'Packs spend every night in our own store.') : passes(line, 'No night: packs are back in our own store the same day.')];
    case 'venue': return [details.nightPlace === null ? unknown(line, 'Packs stay in the venue overnight, and nobody has said where.', ASK) : passes(line, `Overnight in the venue: ${details.nightPlace}.`)];
    case 'sleeping': return [fails({ ...line, mayBeAccepted: true }, 'Packs stay overnight where people sleep.', 'Have them locked away at the venue. If that cannot be, the officer decides in writing.')];
    case 'vehicle': return [fails(line, 'Packs stay overnight in a vehicle.', 'They do not: have them locked away at the venue, or bring them home.')];
    case 'not-sure':
    case null: return [unknown(line, 'Nobody has said where packs are overnight.', 'Say it, also when there is no night.')];
  }
}

function agreed(facts: CheckFacts): CheckLine {
  const line = lineOf(facts, 'there-agreed', true);
  if (facts.site.kind === 'own') {
    return facts.assessment === null
      ? unknown(line, 'Nobody has said what is in place in our own hall.', 'Its signed assessment says it.')
      : passes(line, 'What is in place in our own hall, and what is not, stands in its signed assessment.');
  }
  if (facts.notAgreed.length === 0) return passes(line, 'The venue has agreed to everything that is asked of it.');
  return unknown(line, `The venue has not agreed yet: ${facts.notAgreed.join('; ')}.`, ASK);
}

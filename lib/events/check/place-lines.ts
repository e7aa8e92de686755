import { isMoreEnergy } from '@/lib/core/battery/covered-energy';
import { type CheckedAssessment, type CheckFacts } from './facts';
import { type CheckLine, fails, type LineWords, passes, unknown } from './line';

/** The place: whether a signed assessment holds on that day, and for this number of packs, this energy, these people. */
export function placeLines(facts: CheckFacts): readonly CheckLine[] {
  const { assessment } = facts;
  const emergency = emergencyLine(facts);
  if (assessment === null) return [none(facts), emergency];
  return [force(facts, assessment), until(facts, assessment), ...covers(facts, assessment), emergency];
}

/** Without an assessment an officer may let a day pass on which nothing is charged there, never one with charging. */
const notCharged = ({ details }: CheckFacts): boolean => details.charging === 'no';

function none(facts: CheckFacts): CheckLine {
  const line: LineWords = { id: 'place-assessment', group: 'place', mayBeAccepted: notCharged(facts), link: facts.assessmentOnItsWay === null ? `/assessments/new?site=${facts.site.id}` : `/assessments/${facts.assessmentOnItsWay}` };
  return facts.assessmentOnItsWay === null
    ? fails(line, 'This place has no signed assessment.', 'Begin one; what is known of the place is filled in. If nothing is charged there, the officer may let it pass in writing.')
    : fails(line, 'The assessment of this place is not signed yet.', 'Finish it and have it signed. If nothing is charged there, the officer may let it pass in writing.');
}

function force(facts: CheckFacts, { force: state, name, versionId, endedAcceptances }: CheckedAssessment): CheckLine {
  const line: LineWords = { id: 'place-assessment', group: 'place', mayBeAccepted: false, link: `/assessments/${versionId}/result` };
  switch (state) {
    case 'suspended': return fails(line, `${name} is suspended: nobody charges.`, 'Settle what it was suspended for; a safety officer lifts it.');
    case 'run out': return fails({ ...line, mayBeAccepted: notCharged(facts) }, `The time of ${name} has ended.`, 'Begin the next version as a copy and have it signed.');
    case 'review asked': return fails({ ...line, mayBeAccepted: true }, `${name} is under review: something happened that it did not reckon with.`, 'The safety officer looks at it again and settles the review.');
    case 'superseded':
    case 'not signed': return fails(line, `${name} is not in force.`, 'Have the assessment of this place signed.');
    case 'in force': break;
  }
  if (endedAcceptances.length > 0) return fails(line, `What was accepted in ${name} has ended by then: ${endedAcceptances.join('; ')}.`, 'Settle it, or have the officer decide anew.');
  return passes(line, `${name} is signed and in force.`);
}

function until({ lastDay }: CheckFacts, { holdsUntil, name, versionId }: CheckedAssessment): CheckLine {
  const line: LineWords = { id: 'place-until', group: 'place', mayBeAccepted: false, link: `/assessments/${versionId}/result` };
  if (holdsUntil === null) return unknown(line, `${name} names no day until which it holds.`, 'Begin the next version as a copy and have it signed with a day.');
  return holdsUntil >= lastDay ? passes(line, 'It holds until after the event.') : fails(line, 'It ends before the event does.', 'Begin the next version as a copy and have it signed before you leave.');
}

function covers(facts: CheckFacts, { covers: covered, versionId }: CheckedAssessment): readonly CheckLine[] {
  const line = (id: string): LineWords => ({ id, group: 'place', mayBeAccepted: true, link: `/events/${facts.eventId}/packs` });
  const basics = (id: string): LineWords => ({ ...line(id), link: `/events/${facts.eventId}/edit` });
  if (covered === null) return [unknown({ ...line('place-covers'), mayBeAccepted: false, link: `/assessments/${versionId}/result` }, 'What the assessment covers was not kept.', 'Have its next version signed.')];
  const energies = facts.packs.map(({ energyWh }) => energyWh);
  const energy = energies.reduce<number | null>((sum, one) => (sum === null || one === null ? null : sum + one), 0);
  return [
    held(line('place-packs'), 'packs', facts.packs.length, covered.packs),
    held(line('place-energy'), 'energy', energy, covered.storedWh, { unit: ' Wh', isMore: isMoreEnergy }),
    held(basics('place-people'), 'people of the teams', facts.people, covered.people),
    held(basics('place-spectators'), 'spectators', facts.spectators, covered.spectators),
  ];
}

/** How a thing is measured, and when there is more of it than covered. */
interface Measure { readonly unit: string; readonly isMore: (now: number, covered: number) => boolean }
const COUNTED: Measure = { unit: '', isMore: (now, covered) => now > covered };

function held(line: LineWords, what: string, now: number | null, covered: number, { unit, isMore }: Measure = COUNTED): CheckLine {
  const figure = (value: number): string => `${Number(value.toFixed(1))}${unit}`;
  if (now === null) return unknown({ ...line, mayBeAccepted: false }, `Nobody has said how much there will be: ${what}.`, 'Fill it in, as near as you know it, rather more than less.');
  if (!isMore(now, covered)) return passes(line, `The assessment holds for the ${what}: ${figure(now)}${now > covered ? `, but for rounding the ${figure(covered)} of the paper` : ` of at most ${figure(covered)}`}.`);
  return fails(line, `The assessment holds for at most ${figure(covered)} (${what}); here are ${figure(now)}.`, 'Bring fewer, or have a changed assessment signed first.');
}

function emergencyLine({ site }: CheckFacts): CheckLine {
  const line: LineWords = { id: 'place-emergency', group: 'place', mayBeAccepted: false, link: `/places/${site.id}/edit` };
  const missing = [...(site.emergencyNumber === null ? ['the number to call when there is a fire'] : []), ...(site.meetingPlace === null ? ['where everybody meets outside'] : [])];
  if (missing.length === 0) return passes(line, 'Emergency number and meeting place of the venue are known.');
  return unknown(line, `Nobody has written down ${missing.join(' and ')} at the venue.`, 'Ask the venue and write it at the place.');
}

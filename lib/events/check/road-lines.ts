import { goesByRoad } from '../details';
import type { CheckFacts } from './facts';
import { type CheckLine, fails, type LineWords, saidLine, unknown } from './line';

/**
 * By road: case, separated leads, never in a warm vehicle, apart from people, a plan, two people check. Common practice
 * as the content has it (controls travel-box, leads-covered, vehicle-never-hot, case-apart, trip-plan,
 * no-damaged-travel); what a damaged pack may do on a road is 49 CFR 173.185(f) (REFERENCES F.2).
 */
export function roadLines(facts: CheckFacts): readonly CheckLine[] {
  const { details } = facts;
  if (details.way === null || details.way === 'not-sure') return [way(facts)];
  if (details.way === 'none') return facts.site.kind === 'own' ? [] : [elsewhere(facts)];
  if (!goesByRoad(details)) return [];
  const line = (id: string, mayBeAccepted: boolean): LineWords => lineOf(facts, id, mayBeAccepted);
  return [
    saidLine(line('road-case', true), details.case, { good: 'Packs travel in a rigid padded case, each apart.', open: 'Nobody has said what packs travel in.', bad: 'packs do not travel in a rigid padded case, each apart.', mend: 'Use a rigid padded case with holes for gas and a slot for each pack.' }),
    saidLine(line('road-leads', true), details.leads, { good: 'Each lead is covered, so that no two contacts meet.', open: 'Nobody has said whether leads are covered.', bad: 'leads are not covered each by itself.', mend: 'Cover each lead and balance plug, or keep each pack in a bag of its own that does not conduct.' }),
    saidLine(line('road-warm', true), details.neverWarm, { good: 'Packs are never left in a warm or parked vehicle.', open: 'Nobody has said whether packs may be left in the vehicle.', bad: 'packs are left in the vehicle.', mend: 'They come out with the people, also at a stop.' }),
    saidLine(line('road-apart', true), details.apart, { good: 'The case rides apart from people, strapped down, reachable from outside.', open: 'Nobody has said where the case rides.', bad: 'the case does not ride apart from people.', mend: 'Strap it down away from seats, reachable from outside, not against the rear bumper.' }),
    saidLine(line('road-plan', true), details.plan, { good: 'Driver and adults know what they do at smoke: pull off the road, everybody out, away from traffic, call.', open: 'Nobody has said whether the driver knows what to do at smoke.', bad: 'the driver or the adults do not know what they do at smoke.', mend: 'Go through it with them. Nobody opens the boot or the case.' }),
    saidLine(line('road-checked', false), details.twoCheck, { good: 'Two people check every pack before it is loaded; a damaged one stays home.', open: 'Nobody has said who checks packs before they are loaded.', bad: 'packs are loaded without two people checking each.', mend: 'Two people look at every pack before it is loaded.' }),
  ];
}

const lineOf = ({ eventId }: CheckFacts, id: string, mayBeAccepted: boolean): LineWords => ({ id, group: 'road', mayBeAccepted, link: `/events/${eventId}/travel` });

function way(facts: CheckFacts): CheckLine {
  return unknown(lineOf(facts, 'road-way', false), 'Nobody has said how packs get there.', 'Say whether they go by road or by air, or stay here.');
}

function elsewhere(facts: CheckFacts): CheckLine {
  return fails(lineOf(facts, 'road-way', false), 'The venue is somewhere else, and nobody travels.', 'Say how packs get there.');
}

import type { AdultPart } from '../choices';
import { goesByRoad } from '../details';
import type { CheckFacts } from './facts';
import { type CheckLine, fails, labels, type LineWords, passes } from './line';

/** The people: an adult for each part that must not be left open, who can be called. */
export function peopleLines(facts: CheckFacts): readonly CheckLine[] {
  const { site, details } = facts;
  return [
    part(facts, { id: 'people-leads', of: 'leads', good: 'Leads the team', missing: 'Nobody leads the team.', mayBeAccepted: false }),
    part(facts, { id: 'people-stop', of: 'may-stop', good: 'May stop the match', missing: 'Nobody is named who may stop the match.', mayBeAccepted: false }),
    part(facts, { id: 'people-first-aid', of: 'first-aid', good: 'First aid', missing: 'No first-aider is named.', mayBeAccepted: true }),
    ...(goesByRoad(details) ? [part(facts, { id: 'people-drives', of: 'drives', good: 'Drives', missing: 'No driver is named.', mayBeAccepted: true })] : []),
    ...(details.charging === 'yes' ? [part(facts, { id: 'people-charging', of: 'charging', good: 'Stays with charging packs', missing: 'Nobody is named who stays with charging packs.', mayBeAccepted: false })] : []),
    ...(site.kind === 'away' ? [part(facts, { id: 'people-venue', of: 'venue', good: 'Contact at the venue', missing: 'No contact at the venue is named.', mayBeAccepted: true })] : []),
    two(facts),
  ];
}

interface Part { readonly id: string; readonly of: AdultPart; readonly good: string; readonly missing: string; readonly mayBeAccepted: boolean }

function part({ adults, eventId }: CheckFacts, { id, of, good, missing, mayBeAccepted }: Part): CheckLine {
  const line: LineWords = { id, group: 'people', mayBeAccepted, link: `/events/${eventId}/people` };
  const named = adults.filter(({ parts }) => parts.includes(of));
  if (named.length === 0) return fails(line, missing, 'Name one, with a telephone number.');
  const reached = named.filter(({ phone }) => phone !== null);
  const names = labels(named.map(({ name }) => name));
  return reached.length > 0 ? passes(line, `${good}: ${names}.`) : fails(line, `${good}: ${names}, without a telephone number.`, 'Write the number at which that person is reached on the day.');
}

/** One who is hurt or drives somebody to a doctor leaves the others with an adult. */
function two({ adults, eventId }: CheckFacts): CheckLine {
  const line: LineWords = { id: 'people-two', group: 'people', mayBeAccepted: true, link: `/events/${eventId}/people` };
  const ours = adults.filter(({ parts }) => parts.some((one) => one !== 'venue'));
  return ours.length >= 2 ? passes(line, `${ours.length} adults of ours are there.`) : fails(line, 'Fewer than two adults of ours are named.', 'Name a second, so that nobody is left alone with packs or students.');
}

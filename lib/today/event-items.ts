import type { EventFact } from './facts';
import { daysWords, now, soon, type TodayItem } from './item';

/** A file takes time: two weeks before the day is soon enough to press. */
const NEAR_DAYS = 14;

/** Events that wait for the reader: to be checked and signed, to be mended, or to be handed over in time. */
export function eventItems(events: readonly EventFact[]): readonly TodayItem[] {
  return events.flatMap(itemsOf);
}

function itemsOf({ id, title, state, isMine, isForMe, preparer, preparerSigned, daysLeft }: EventFact): readonly TodayItem[] {
  const href = `/events/${id}` as const;
  const name = `“${title}”`;
  if (state === 'with-officer' && isForMe && preparerSigned) return [now({ id: `event-check-${id}`, title: `Check the file of ${name}`, why: `${preparer} has handed it over to you; the event is ${daysWords(daysLeft)}. Sign it, or return it with what is to be changed.`, href, verb: 'Check it' })];
  if (state === 'with-officer' && isMine && !preparerSigned) return [now({ id: `event-again-${id}`, title: `Sign the file of ${name} once more`, why: 'The officer let a line of the check stand, which is printed on it.', href, verb: 'Read and sign' })];
  if (state === 'returned' && isMine) return [now({ id: `event-returned-${id}`, title: `${name} came back`, why: 'Change what is to be changed, and hand it over again.', href, verb: 'Read why' })];
  if (state === 'draft' && isMine && daysLeft <= NEAR_DAYS) return [soon({ id: `event-draft-${id}`, title: `${name} is ${daysWords(daysLeft)} and not handed over`, why: 'Its check says what is still open.', href, verb: 'See the check' })];
  return [];
}

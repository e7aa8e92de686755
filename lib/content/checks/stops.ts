import type { Content, StopCondition } from '../model';
import { conditionFaults } from './conditions';
import { type ContentFault, must } from './fault';

/** Nobody may put a stop condition off for longer: our judgement. */
const LONGEST_DAYS = 30;

/** Stop conditions on what does not exist, and such as could be accepted for long. */
export function stopFaults(content: Content): readonly ContentFault[] {
  return content.stops.flatMap((stop) => [
    ...conditionFaults(content, stop.when, `stop ${stop.id}`, { askedBefore: null, derivedAllowed: true }),
    ...acceptableFaults(content, stop),
  ]);
}

/** From the second edition on each stop says whether it may be accepted. */
function acceptableFaults({ edition }: Content, { id, acceptable }: StopCondition): readonly ContentFault[] {
  const where = `stop ${id}`;
  if (acceptable === undefined) return must(edition === undefined, where, 'does not say whether it may be accepted');
  return must(acceptable.kind !== 'until' || acceptable.days <= LONGEST_DAYS, where, `may be put off for at most ${LONGEST_DAYS} days`);
}

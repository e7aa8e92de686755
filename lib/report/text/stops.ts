import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { acceptanceWords } from '@/lib/wording/acceptance';
import { effortText } from './effort';
import { hanging, heading } from './layout';

/** Each stop condition that holds: why, what settles it, which single action would, and whether somebody may accept it. */
export function stopLines(result: ScoreResult, content: Content): readonly string[] {
  if (result.stops.length === 0) return [];
  return [...heading('Stop conditions: settle these first'), ...result.stops.flatMap((stop, at) => [
    ...hanging(`${String(at + 1).padStart(2)}  `, stop.title),
    ...hanging('    Why:     ', stop.why),
    ...hanging('    Settle:  ', stop.settledBy),
    ...acceptanceLines(stop.id, content),
    ...result.actions.filter((action) => action.clearsStops.includes(stop.id))
      .flatMap((action) => hanging('    Action:  ', `${action.title} (${effortText(action, content)})`)),
  ])];
}

function acceptanceLines(stop: string, { stops }: Content): readonly string[] {
  const acceptance = acceptanceWords(stops.find(({ id }) => id === stop)?.acceptable);
  return acceptance === null ? [] : hanging('    Accept:  ', `${acceptance.lead} ${acceptance.words}`);
}

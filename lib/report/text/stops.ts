import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { effortText } from './effort';
import { hanging, heading } from './layout';

/** Each stop condition that holds: why, what settles it, and which single action would. */
export function stopLines(result: ScoreResult, content: Content): readonly string[] {
  if (result.stops.length === 0) return [];
  return [...heading('Stop conditions: settle these first'), ...result.stops.flatMap((stop, at) => [
    ...hanging(`${String(at + 1).padStart(2)}  `, stop.title),
    ...hanging('    Why:     ', stop.why),
    ...hanging('    Settle:  ', stop.settledBy),
    ...result.actions.filter((action) => action.clearsStops.includes(stop.id))
      .flatMap((action) => hanging('    Action:  ', `${action.title} (${effortText(action, content)})`)),
  ])];
}

import type { Content } from '@/lib/content/model';
import type { ActionResult, ScoreResult } from '@/lib/core/result';
import { exact, percent, percentRange } from '@/lib/wording/numbers';
import { searchWords } from '@/lib/wording/search';
import { effortText } from './effort';
import { hanging, heading, PAGE_WIDTH, wrap } from './layout';

/** The best set for the effort there is, with what each of its parts would do alone. */
export function firstActionLines(result: ScoreResult, content: Content): readonly string[] {
  const { bestSet } = result;
  if (bestSet.controls.length === 0) return [...heading('What to do first'), ...wrap(`Nothing that lowers the harm fits into ${exact(bestSet.budget)} points of effort.`, PAGE_WIDTH)];
  const chosen = bestSet.controls.flatMap((id) => result.actions.find(({ control }) => control === id) ?? []);
  return [
    ...heading('What to do first'),
    ...wrap(`For ${exact(bestSet.budget)} points of effort (hours, and points for money) this set takes away most: ${percent(bestSet.cut)} of the harm (${percentRange(bestSet.cutInterval.p05, bestSet.cutInterval.p95)}). ${searchWords(bestSet)}`.trimEnd(), PAGE_WIDTH),
    ...[...chosen].sort((a, b) => b.harmReduction - a.harmReduction).flatMap((action) => actionLines(action, result, content)),
  ];
}

function actionLines(action: ActionResult, { stops }: ScoreResult, content: Content): readonly string[] {
  const settled = stops.filter(({ id }) => action.clearsStops.includes(id)).map(({ title }) => title);
  const what = `${effortText(action, content)}; alone it takes away ${percent(action.share)}`;
  return [
    ...hanging(' *  ', action.title),
    ...hanging('    ', settled.length === 0 ? what : `${what}; settles: ${settled.join('; ')}`),
  ];
}

import type { ActionResult, BestSet } from '@/lib/core/result';

interface SortedActions {
  /** settle a stop, in order of harm taken away */
  readonly settling: readonly ActionResult[];
  /** in the chosen set and not above */
  readonly best: readonly ActionResult[];
  readonly others: readonly ActionResult[];
}

/** Each action once: stops compete with nothing, so what settles one comes first. */
export function sortedActions(actions: readonly ActionResult[], chosen: BestSet): SortedActions {
  const settles = (action: ActionResult): boolean => action.clearsStops.length > 0;
  const isBest = (action: ActionResult): boolean => !settles(action) && chosen.controls.includes(action.control);
  return {
    settling: actions.filter(settles),
    best: actions.filter(isBest),
    others: actions.filter((action) => !settles(action) && !isBest(action)),
  };
}

import { withAllPlanned, withBudget, withPlanned } from './edit-document';
import { plannedOf, type WholeDocument } from './whole-document';

/** The list of planned actions, and how it is changed. */
export interface EditPlan {
  readonly has: (control: string) => boolean;
  readonly set: (control: string, planned: boolean) => void;
  readonly all: (controls: readonly string[]) => void;
  readonly budget: (points: number) => void;
}

type Change = (change: (whole: WholeDocument) => WholeDocument, what: string) => void;

export function editPlan(whole: WholeDocument, change: Change): EditPlan {
  const planned = plannedOf(whole);
  return {
    has: (control) => planned.includes(control),
    set: (control, on) => change((document) => withPlanned(document, control, on), on ? 'planning an action' : 'taking an action off the plan'),
    all: (controls) => change((document) => withAllPlanned(document, controls), `planning ${controls.length} actions`),
    budget: (points) => change((document) => withBudget(document, points), `an effort of ${points} points`),
  };
}

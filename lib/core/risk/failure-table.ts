import type { Control, ControlState } from '@/lib/content/model';
import { meanFailure } from './mean-failure';

/** Mean failures by control and state, each worked out once: "not sure" alone takes two hundred evaluations. */
export class FailureTable {
  private readonly known: readonly Map<ControlState, number>[];
  constructor(private readonly controls: readonly Control[]) { this.known = controls.map(() => new Map()); }

  /** E[X] of the control at this index, 0 to 1. */
  of(index: number, state: ControlState): number {
    const known = this.known[index];
    const control = this.controls[index];
    if (known === undefined || control === undefined) throw new Error(`no control ${index}`);
    const found = known.get(state) ?? meanFailure(control, state);
    known.set(state, found);
    return found;
  }
}

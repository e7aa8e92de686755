import type { Control, ControlState } from '@/lib/content/model';
import { clippedPowerMean } from '@/lib/core/statistics/clipped-lognormal';
import { simpson } from '@/lib/core/statistics/simpson';

/** Slices of the Simpson rule over U in [0, 1] for a control nobody is sure of (amendment A4). */
const UNSURE_INTERVALS = 200;

/**
 * Mean probability that a control fails on demand, E[X], by its state (amendments A1 to A5):
 * in place E[X], partly E[X^½], not sure E[X^U] with U uniform on 0 to 1, absent or not applicable 1.
 * @returns 0 to 1; in place ≤ partly ≤ not sure ≤ 1
 */
export function meanFailure(control: Control, state: ControlState): number {
  switch (state) {
    case 'absent':
    case 'not applicable': return 1;
    case 'in place': return clippedPowerMean(control.pfd, control.errorFactor, 1);
    case 'partly': return clippedPowerMean(control.pfd, control.errorFactor, 0.5);
    case 'not sure': return simpson((u) => (u === 0 ? 1 : clippedPowerMean(control.pfd, control.errorFactor, u)), 0, 1, UNSURE_INTERVALS);
  }
}

import type { ControlState } from '@/lib/content/model';
import { type Venue, withStates } from '@/lib/core/answers/venue';
import { inPlace } from './candidates';
import { evaluateClosed } from './closed-form';
import type { RiskSetup } from './risk-setup';
import type { ThreeStates } from './risk-results';

/** Every control absent except those that do not apply; inputs unchanged (amendment A16). */
export function inherentVenue(venue: Venue): Venue {
  const absent = [...venue.states].filter(([, state]) => state !== 'not applicable').map(([control]): [string, ControlState] => [control, 'absent']);
  return withStates(venue, new Map(absent));
}

export function threeStates(setup: RiskSetup, planned: readonly string[]): ThreeStates {
  return {
    today: evaluateClosed(setup, setup.venue),
    inherent: evaluateClosed(setup, inherentVenue(setup.venue)),
    planned: evaluateClosed(setup, inPlace(setup.venue, planned)),
  };
}

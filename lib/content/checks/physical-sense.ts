import type { Branch, Consequence } from '../model';
import { type ContentFault, must } from './fault';

/** What a control can physically not do, by consequence: a sprinkler does not thin the smoke people breathe. */
const CANNOT_REDUCE: Readonly<Record<Consequence, readonly string[]>> = {
  'people-smoke': ['surface-charging', 'first-aid', 'sprinkler', 'eye-protection', 'sand-container'],
  'people-impact': ['smoke-alarm-charging', 'smoke-outlet', 'sprinkler', 'alarm-means'],
  'people-burn': ['charge-off-exit', 'exits-clear', 'smoke-outlet', 'store-off-exit', 'door-closes'],
  'spread-room': [
    'exits-clear', 'charge-off-exit', 'store-off-exit', 'response-drill', 'response-card', 'first-aid', 'smoke-outlet', 'barrier-charging',
  ],
  programme: ['first-aid'],
};

/** After a hit by a rotor, first aid does decide how long the programme stands still. */
const EXCEPTION = { scenario: 'rotor-strike', consequence: 'programme' };

/** @returns a fault for each control that a branch credits with what it cannot do */
export function physicalSenseFaults(scenario: string, branch: Branch, where: string): readonly ContentFault[] {
  if (scenario === EXCEPTION.scenario && branch.consequence === EXCEPTION.consequence) return [];
  return branch.mitigating.flatMap((use) =>
    must(!CANNOT_REDUCE[branch.consequence].includes(use.control), where, `${use.control} cannot reduce ${branch.consequence}`));
}

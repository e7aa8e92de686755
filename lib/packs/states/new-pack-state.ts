import { firedRules } from '@/lib/core/battery/fired-rules';
import { NOT_SURE } from '@/lib/core/battery/pack-measures';
import type { PackLimits } from '@/lib/content/model';
import type { PackDetails } from '../pack';
import type { NewState } from './new-state';

/**
 * The state a pack has when it is entered: in use, or on watch for what its label and its origin say already (full
 * voltage not marked, second-hand). Whether it is fit, only a check says.
 */
export function stateOfNewPack(limits: PackLimits, { cellType, secondHand }: Pick<PackDetails, 'cellType' | 'secondHand'>): NewState {
  const { fired } = firedRules(limits, { cellType, secondHand: secondHand ?? NOT_SURE });
  const signs = fired.map(({ text }) => text);
  return signs.length === 0
    ? { to: 'in-use', reason: 'Entered in the register', cause: null }
    : { to: 'watch', reason: `Entered in the register: ${signs.join('; ')}`, cause: null };
}

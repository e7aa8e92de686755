import type { Content } from './model';
import { controlFaults, roleFaults } from './checks/controls';
import { type ContentFault, idFaults, must } from './checks/fault';
import { formulaFaults } from './checks/formulas';
import { guidanceFaults } from './checks/guidance';
import { moveFaults } from './checks/moves';
import { matrixFaults, packLimitFaults, physicsFaults } from './checks/numbers';
import { pageFaults } from './checks/pages';
import { packCheckFaults } from './checks/pack-check';
import { questionFaults } from './checks/questions';
import { reachFaults } from './checks/reach';
import { scenarioFaults } from './checks/scenarios';
import { stopFaults } from './checks/stops';
import { tableFaults } from './checks/tables';

const LISTS = ['controls', 'scenarios', 'inputs', 'exposures', 'questions', 'sections', 'stops', 'physics', 'constants', 'groups'] as const;

/**
 * What is wrong with an edition beyond its shape: references that lead nowhere, controls nobody asks about,
 * numbers outside the trade's ranges, means credited with what they cannot do.
 * @returns every fault, none when the edition may be published
 */
export function contentFaults(content: Content): readonly ContentFault[] {
  return [
    ...LISTS.flatMap((list) => idFaults(list, content[list])),
    ...controlFaults(content),
    ...roleFaults(content),
    ...scenarioFaults(content),
    ...questionFaults(content),
    ...reachFaults(content),
    ...stopFaults(content),
    ...moveFaults(content),
    ...pageFaults(content),
    ...tableFaults(content),
    ...formulaFaults(content),
    ...physicsFaults(content),
    ...packLimitFaults(content),
    ...packCheckFaults(content),
    ...matrixFaults(content),
    ...harmWeightFaults(content),
    ...(content.guidance === undefined ? [] : guidanceFaults(content.guidance, content.inputs)),
  ];
}

/** A worse class must weigh more. */
function harmWeightFaults({ harmWeights }: Content): readonly ContentFault[] {
  const weights = [harmWeights['1'], harmWeights['2'], harmWeights['3'], harmWeights['4'], harmWeights['5']];
  return must(weights.every((weight, at) => weight > (weights[at - 1] ?? 0)), 'harmWeights', 'must rise with the class');
}

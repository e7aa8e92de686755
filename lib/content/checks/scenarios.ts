import type { Branch, Content, ControlUse, Scenario } from '../model';
import { type ContentFault, idFaults, idsOf, kindFaults, must } from './fault';
import { physicalSenseFaults } from './physical-sense';

/** A fall over a cable has two causes to prevent and one harm to soften; every other scenario has more. */
const SMALL_SCENARIO = 'trip-and-cable';

/** Bow ties that are too thin, lead to unknown controls, or count one control on both sides of a path. */
export function scenarioFaults(content: Content): readonly ContentFault[] {
  const exposures = idsOf(content.exposures);
  return content.scenarios.flatMap((scenario) => {
    const where = `scenario ${scenario.id}`;
    const { mean, errorFactor, kind } = scenario.rate;
    return [
      ...idFaults(`${where} branches`, scenario.branches),
      ...must(exposures.has(scenario.exposureBase), where, `exposure ${scenario.exposureBase} is unknown`),
      ...must(mean > 0 && mean < 1 && errorFactor > 1 && errorFactor <= 20, where, 'rate must be between 0 and 1, its error factor above 1 and at most 20'),
      ...kindFaults(kind, where),
      ...must(scenario.fireShare >= 0 && scenario.fireShare <= 1, where, 'fireShare must be 0 to 1'),
      ...useFaults(content, scenario.preventive, where),
      ...preventiveFaults(content, scenario, where),
      ...scenario.branches.flatMap((branch) => branchFaults(content, scenario, branch)),
      ...mitigatingCountFaults(scenario, where),
    ];
  });
}

function useFaults(content: Content, uses: readonly ControlUse[], where: string): readonly ContentFault[] {
  const controls = idsOf(content.controls);
  const ids = uses.map((use) => use.control);
  return [
    ...uses.flatMap((use) => must(controls.has(use.control), where, `unknown control ${use.control}`)),
    ...uses.flatMap((use) => must(use.reach > 0 && use.reach <= 1, where, `reach of ${use.control} must be above 0 and at most 1`)),
    ...must(new Set(ids).size === ids.length, where, 'a control stands twice'),
  ];
}

function preventiveFaults(content: Content, scenario: Scenario, where: string): readonly ContentFault[] {
  const least = scenario.id === SMALL_SCENARIO ? 2 : 3;
  const onlyMitigate = new Set(content.controls.filter((control) => control.role === 'mitigate').map((control) => control.id));
  return [
    ...must(new Set(scenario.preventive.map((use) => use.control)).size >= least, where, `fewer than ${least} preventive controls`),
    ...scenario.preventive.flatMap((use) => must(!onlyMitigate.has(use.control), where, `${use.control} mitigates only`)),
  ];
}

function branchFaults(content: Content, scenario: Scenario, branch: Branch): readonly ContentFault[] {
  const where = `scenario ${scenario.id}/${branch.id}`;
  const preventive = new Set(scenario.preventive.map((use) => use.control));
  const { p, errorFactor, kind } = branch.conditional;
  return [
    ...must(p > 0 && p <= 1 && errorFactor >= 1 && errorFactor <= 10, where, 'conditional must be above 0 and at most 1, its error factor 1 to 10'),
    ...kindFaults(kind, where),
    ...useFaults(content, branch.mitigating, where),
    ...branch.mitigating.flatMap((use) => must(!preventive.has(use.control), where, `${use.control} both prevents and mitigates on one path`)),
    ...physicalSenseFaults(scenario.id, branch, where),
  ];
}

function mitigatingCountFaults(scenario: Scenario, where: string): readonly ContentFault[] {
  const least = scenario.id === SMALL_SCENARIO ? 1 : 2;
  const mitigating = new Set(scenario.branches.flatMap((branch) => branch.mitigating.map((use) => use.control)));
  return must(mitigating.size >= least, where, `fewer than ${least} mitigating controls`);
}

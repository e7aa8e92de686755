import type { Content, Control } from '../model';
import { type ContentFault, idsOf, kindFaults, must } from './fault';

/** A procedure is never trusted as far as a thing. Both least values are of the edition itself. */
function leastPfd(content: Content, control: Control): number {
  return control.tier === 'administer' || control.tier === 'protect' ? content.ranges.procedureMin : content.ranges.pfdMin;
}

/** Failure probabilities, error factors, groups and efforts outside what the edition allows itself. */
export function controlFaults(content: Content): readonly ContentFault[] {
  const groups = idsOf(content.groups);
  const bands = new Set(content.moneyBands.map((band) => band.band));
  const faults = content.controls.flatMap((control) => {
    const where = `control ${control.id}`;
    const least = leastPfd(content, control);
    return [
      ...must(control.pfd >= least && control.pfd < 1, where, `pfd ${control.pfd} is below ${least} or not below 1`),
      ...must(control.errorFactor > 1 && control.errorFactor <= 10, where, 'errorFactor must be above 1 and at most 10'),
      ...must(control.group === null || groups.has(control.group), where, `group ${control.group} is unknown`),
      ...must(control.effort.hours >= 0 && control.effort.hours <= 400, where, 'effort must be 0 to 400 hours'),
      ...must(bands.has(control.effort.moneyBand), where, `money band ${control.effort.moneyBand} is unknown`),
      ...must(control.goodLooksLike.endsWith('.'), where, 'goodLooksLike must be a sentence'),
      ...kindFaults(control.kind, where),
    ];
  });
  const lonely = content.groups.filter((group) => content.controls.filter((control) => control.group === group.id).length < 2);
  return [...faults, ...lonely.map((group) => ({ where: `group ${group.id}`, problem: 'has fewer than two controls' }))];
}

/** Every control must be used, in the role it is given. */
export function roleFaults(content: Content): readonly ContentFault[] {
  const prevents = new Set(content.scenarios.flatMap((scenario) => scenario.preventive.map((use) => use.control)));
  const mitigates = new Set(content.scenarios.flatMap((scenario) =>
    scenario.branches.flatMap((branch) => branch.mitigating.map((use) => use.control))));
  return content.controls.flatMap((control) => {
    const where = `control ${control.id}`;
    const [first, second] = [prevents.has(control.id), mitigates.has(control.id)];
    if (!first && !second) return [{ where, problem: 'is never used' }];
    if (control.role === 'both') return must(first && second, where, 'role both, but used in one way only');
    if (control.role === 'prevent') return must(first, where, 'role prevent, but never prevents');
    return must(second, where, 'role mitigate, but never mitigates');
  });
}

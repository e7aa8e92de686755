import { stateOf, type Venue } from '@/lib/core/answers/venue';
import { at } from '@/lib/core/at';
import type { ControlInRisk } from '@/lib/core/result';
import type { CompiledScenario, CompiledUse } from './compiled-content';
import { countedUses, effectiveFailure } from './counted-uses';
import { failuresOf, type RiskSetup } from './risk-setup';

/** Every use of a control in one risk, with what it does there today; preventive first, then branch by branch. */
export function controlsInRisk(setup: RiskSetup, venue: Venue, compiled: CompiledScenario): readonly ControlInRisk[] {
  const failure = failuresOf(setup.compiled, venue);
  const { controls } = setup.compiled;
  const top = new Set(countedUses(compiled.preventive, failure, controls));
  const describe = (use: CompiledUse, counts: boolean, branch: string | null): ControlInRisk => {
    const control = at(controls, use.control);
    const meanFailure = at(failure, use.control);
    return {
      control: control.id,
      title: control.title,
      state: stateOf(venue, control.id),
      meanFailure,
      part: branch === null ? 'prevent' : 'mitigate',
      branch,
      reach: use.reach,
      effectiveFailure: effectiveFailure(use.reach, meanFailure),
      counts,
    };
  };
  const preventive = compiled.preventive.map((use, position) => describe(use, top.has(position), null));
  const mitigating = compiled.branches.flatMap(({ branch, path }) => {
    const counted = new Set(countedUses(path, failure, controls));
    return path.slice(compiled.preventive.length).map((use, offset) => describe(use, counted.has(compiled.preventive.length + offset), branch.id));
  });
  return [...preventive, ...mitigating];
}

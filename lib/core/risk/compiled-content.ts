import type { Branch, Content, Control, ControlUse, Scenario } from '@/lib/content/model';
import { FailureTable } from './failure-table';

/** A use of a control by index, so that hot loops need no look-up by name. */
export interface CompiledUse {
  readonly control: number;
  readonly reach: number;
  /** index of the control's group, −1 when it stands alone */
  readonly group: number;
}
export interface CompiledBranch {
  readonly branch: Branch;
  /** preventive uses first, then this branch's mitigating ones: one path from cause to end */
  readonly path: readonly CompiledUse[];
}
export interface CompiledScenario {
  readonly scenario: Scenario;
  readonly preventive: readonly CompiledUse[];
  readonly branches: readonly CompiledBranch[];
}
export interface CompiledContent {
  readonly controls: readonly Control[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly scenarios: readonly CompiledScenario[];
  /** for each control, which standard normal it takes: one for a group, one for each control that stands alone (A7, A14) */
  readonly slotOf: readonly number[];
  readonly slots: number;
  readonly failures: FailureTable;
}

/** @throws when a use names a control or a control names a group that is not there: a fault of the content */
export function compileContent(content: Content): CompiledContent {
  const indexOf = new Map(content.controls.map((control, index) => [control.id, index]));
  const groupOf = new Map(content.groups.map((group, index) => [group.id, index]));
  const compileUse = (use: ControlUse): CompiledUse => {
    const control = indexOf.get(use.control);
    const group = content.controls[control ?? -1]?.group;
    if (control === undefined || group === undefined) throw new Error(`no control ${use.control}`);
    return { control, reach: use.reach, group: group === null ? -1 : groupIndex(groupOf, group) };
  };
  const scenarios = content.scenarios.map((scenario): CompiledScenario => {
    const preventive = scenario.preventive.map(compileUse);
    return { scenario, preventive, branches: scenario.branches.map((branch) => ({ branch, path: [...preventive, ...branch.mitigating.map(compileUse)] })) };
  });
  return { controls: content.controls, indexOf, scenarios, ...slotsOf(content), failures: new FailureTable(content.controls) };
}

function groupIndex(groupOf: ReadonlyMap<string, number>, group: string): number {
  const index = groupOf.get(group);
  if (index === undefined) throw new Error(`no group ${group}`);
  return index;
}

function slotsOf(content: Content): { readonly slotOf: readonly number[]; readonly slots: number } {
  const taken = new Map<string, number>();
  const slotOf = content.controls.map((control) => {
    const key = control.group === null ? `control ${control.id}` : `group ${control.group}`;
    const slot = taken.get(key) ?? taken.size;
    taken.set(key, slot);
    return slot;
  });
  return { slotOf, slots: taken.size };
}

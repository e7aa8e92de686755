import type { Condition, Content } from '../model';
import { type ContentFault, idsOf, must } from './fault';

/** What a condition may look at: null for `inputs` means any input of the edition. */
export interface ConditionScope { readonly askedBefore: ReadonlySet<string> | null; readonly derivedAllowed: boolean }

/** @returns a fault for each name in a condition that does not exist or is not known yet when it is tried */
export function conditionFaults(content: Content, condition: Condition, where: string, scope: ConditionScope): readonly ContentFault[] {
  if ('all' in condition) return condition.all.flatMap((part) => conditionFaults(content, part, where, scope));
  if ('any' in condition) return condition.any.flatMap((part) => conditionFaults(content, part, where, scope));
  if ('control' in condition) return must(idsOf(content.controls).has(condition.control), where, `control ${condition.control} is unknown`);
  if ('derived' in condition) {
    return [
      ...must(scope.derivedAllowed, where, `${condition.derived} is computed from all answers, no question can wait for it`),
      ...must((condition.value === undefined) !== (condition.input === undefined), where, `${condition.derived} needs either a value or an input to compare with`),
      ...(condition.input === undefined ? [] : inputFaults(content, condition.input, where, scope)),
    ];
  }
  return inputFaults(content, condition.input, where, scope);
}

function inputFaults(content: Content, input: string, where: string, scope: ConditionScope): readonly ContentFault[] {
  return [
    ...must(idsOf(content.inputs).has(input), where, `input ${input} is unknown`),
    ...must(scope.askedBefore === null || scope.askedBefore.has(input), where, `depends on ${input}, asked later or never`),
  ];
}

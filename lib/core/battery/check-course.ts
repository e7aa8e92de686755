import type { CheckStep, PackLimits, PackVerdict } from '@/lib/content/model';
import type { FiredRule } from './fired-rules';

/** A step of a check with what is asked in it, up to the sign that ends the check. */
export interface AskedStep { readonly step: CheckStep; readonly measures: readonly string[] }
export interface CheckCourse {
  readonly steps: readonly AskedStep[];
  /** the step and measure of the first sign of `leave`: nothing more is asked, everybody goes */
  readonly endsAt: { readonly step: string; readonly measure: string } | null;
}

/**
 * What a check asks, in its order. It ends at the first sign of `leave`, so that nobody is asked to put a
 * meter on a pack that heats itself; steps for which somebody handles the pack fall out once it is to be
 * isolated. The first edition has no order: no steps.
 * @param fired rules that fired on what is known so far
 */
export function checkCourse(limits: PackLimits, fired: readonly FiredRule[]): CheckCourse {
  const shows = (measure: string, verdict: PackVerdict): boolean => fired.some((rule) => rule.measure === measure && rule.verdict === verdict);
  const steps: AskedStep[] = [];
  let isolated = false;
  for (const step of limits.check?.steps ?? []) {
    if (step.handles && isolated) continue;
    const sign = step.measures.findIndex((measure) => shows(measure, 'leave'));
    const measures = sign === -1 ? step.measures : step.measures.slice(0, sign + 1);
    steps.push({ step, measures });
    const last = measures.at(-1);
    if (sign !== -1 && last !== undefined) return { steps, endsAt: { step: step.id, measure: last } };
    isolated ||= step.measures.some((measure) => shows(measure, 'isolate'));
  }
  return { steps, endsAt: null };
}

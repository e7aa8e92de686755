import type { PackLimits } from '@/lib/content/model';
import type { CheckCourse } from './check-course';
import type { TriedRules } from './fired-rules';
import { measureOf, NOT_SURE, type PackMeasures } from './pack-measures';

/** A measure that some rule wants and that gave nothing, with the reason where there is one. */
export interface MissingMeasure { readonly measure: string; readonly why: string | null }

/**
 * What is missing of a check, once each, in the order it is asked. What the check no longer asks for is not
 * missing; what would only clear a rule is missing when that rule fired.
 */
export function missingMeasures(limits: PackLimits, measures: PackMeasures, tried: TriedRules, course: CheckCourse): readonly MissingMeasure[] {
  const wanted = new Set(limits.rules.map((rule) => rule.measure));
  for (const { id } of tried.fired) {
    const exception = limits.rules.find((rule) => rule.id === id)?.unless;
    if (exception !== undefined) wanted.add(exception.measure);
  }
  const asked = limits.check === undefined ? [...wanted] : course.steps.flatMap((step) => step.measures);
  return asked.filter((name) => wanted.has(name)).flatMap((measure) => missing(measure, limits, measures, tried));
}

function missing(measure: string, limits: PackLimits, measures: PackMeasures, tried: TriedRules): readonly MissingMeasure[] {
  const notJudged = tried.notJudged.get(measure);
  if (notJudged !== undefined) return [{ measure, why: notJudged }];
  const known = measureOf(measures, measure);
  switch (known.is) {
    case 'value': return [];
    case 'missing': return [{ measure, why: known.why }];
    case 'doubt': return limits.rules.some((rule) => rule.measure === measure && rule.doubtCounts === true) ? [] : [{ measure, why: NOT_SURE }];
  }
}

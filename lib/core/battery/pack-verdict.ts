import type { PackLimits, PackUse, PackVerdict } from '@/lib/content/model';
import { checkCourse, type CheckCourse } from './check-course';
import { type FiredRule, firedRules } from './fired-rules';
import { missingMeasures, type MissingMeasure } from './missing-measures';
import { measureOf, type PackMeasures } from './pack-measures';

export interface PackCheckResult {
  /** the most urgent of the rules that fired, else the mildest the check allows; null when nothing at all was measured */
  readonly verdict: PackVerdict | null;
  /** most urgent first, then in the order of the rules */
  readonly fired: readonly FiredRule[];
  /** measures that some rule wants and nobody took; they fired nothing and must be shown */
  readonly missing: readonly MissingMeasure[];
  /** what the pack may not be used for, all rules together; null where the edition does not say */
  readonly blocks: readonly PackUse[] | null;
  /** why the check cannot come out as fit although no sign was found; null when it can */
  readonly incomplete: string | null;
  /** where the check ended because of a sign of `leave` */
  readonly endsAt: CheckCourse['endsAt'];
}

const USES: readonly PackUse[] = ['charge', 'fly', 'travel'];

/**
 * Verdict of a pack check: every rule whose measure is known is tried with the figures of the pack's kind of
 * cell, and the most urgent that fires decides (the content's order: leave, isolate, retire, watch). What the
 * pack may not be used for is all that any fired rule stops. A pack of which nothing is known has no verdict,
 * and a check without what it needs is never fit: not looking must not come out as good.
 * @param measures by the content's names; the kind of cell is the measure `cellType`
 * @throws when a measure has not the kind its rule wants, or is no finite number
 */
export function packVerdict(limits: PackLimits, measures: PackMeasures): PackCheckResult {
  const tried = firedRules(limits, measures);
  const course = checkCourse(limits, tried.fired);
  const missing = missingMeasures(limits, measures, tried, course);
  const gap = isIncomplete(limits, missing) ? limits.check?.incomplete : undefined;
  const found: readonly (PackVerdict | undefined)[] = [tried.fired[0]?.verdict, gap?.verdict, limits.order[0]];
  return {
    verdict: isNothingKnown(limits, measures) ? null : mostUrgent(limits, found),
    fired: tried.fired,
    missing,
    blocks: limits.check === undefined ? null : united([...tried.fired.map((rule) => rule.blocks ?? USES), gap?.blocks ?? []]),
    incomplete: gap?.text ?? null,
    endsAt: course.endsAt,
  };
}

function isNothingKnown(limits: PackLimits, measures: PackMeasures): boolean {
  return limits.rules.every((rule) => measureOf(measures, rule.measure).is === 'missing');
}

function isIncomplete(limits: PackLimits, missing: readonly MissingMeasure[]): boolean {
  const names = new Set(missing.map(({ measure }) => measure));
  return limits.check?.incomplete.needs.some((anyOf) => anyOf.every((name) => names.has(name))) ?? false;
}

function mostUrgent({ order }: PackLimits, verdicts: readonly (PackVerdict | undefined)[]): PackVerdict | null {
  return [...order].reverse().find((verdict) => verdicts.includes(verdict)) ?? null;
}

function united(blocks: readonly (readonly PackUse[])[]): readonly PackUse[] {
  return USES.filter((use) => blocks.some((some) => some.includes(use)));
}

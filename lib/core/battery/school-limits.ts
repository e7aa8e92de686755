import type { PackLimits } from '@/lib/content/model';
import { ok, refuse, type Result } from '@/lib/units/quantity';

/** A school's own figures by rule id; also `storageCharge` (its target) and `landing`, in volts a cell. */
export type SchoolLimits = Readonly<Record<string, number>>;

interface Adjustable { readonly schoolMay?: { readonly min: number; readonly max: number } }

/**
 * The limits of the content with a school's own figures written in. A school may be stricter within the
 * stated range and never looser; a rule without a range is fixed.
 * @returns the limits, or the reason why the first unfit figure is refused; then nothing is changed
 */
export function limitsOfSchool(limits: PackLimits, chosen: SchoolLimits): Result<PackLimits> {
  const adjustable = new Map<string, Adjustable>([
    ...limits.rules.map((rule): [string, Adjustable] => [rule.id, rule]),
    ['storageCharge', limits.storageCharge],
    ['landing', limits.landing],
  ]);
  for (const [id, value] of Object.entries(chosen)) {
    const reason = refusal(id, value, adjustable.get(id));
    if (reason !== null) return refuse(reason);
  }
  const figure = <T>(id: string, standing: T): T | number => (Object.hasOwn(chosen, id) ? (chosen[id] ?? standing) : standing);
  return ok({
    ...limits,
    rules: limits.rules.map((rule) => ({ ...rule, value: figure(rule.id, rule.value) })),
    storageCharge: { ...limits.storageCharge, target: figure('storageCharge', limits.storageCharge.target) },
    landing: { ...limits.landing, value: figure('landing', limits.landing.value) },
  });
}

function refusal(id: string, value: number, limit: Adjustable | undefined): string | null {
  if (limit === undefined) return `there is no limit called ${id}`;
  if (limit.schoolMay === undefined) return `${id} is fixed`;
  const { min, max } = limit.schoolMay;
  return value >= min && value <= max ? null : `${id} must lie between ${min} and ${max}, got ${value}`;
}

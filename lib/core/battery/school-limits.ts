import type { CellType, PackLimits, SchoolRange } from '@/lib/content/model';
import { ok, refuse, type Result } from '@/lib/units/quantity';

/**
 * A school's own figures by rule id; also `storageCharge` (its target) and `landing`, in volts a cell. Figures of
 * another kind of cell have its id before them: `full-4-35/cell-too-high`.
 */
export type SchoolLimits = Readonly<Record<string, number>>;

type OwnFigures = Extract<CellType, { sort: 'own figures' }>;
interface Adjustable { readonly schoolMay?: SchoolRange }

/**
 * The limits of the content with a school's own figures written in. A school may be stricter within the
 * stated range and never looser; a rule without a range is fixed.
 * @returns the limits, or the reason why the first unfit figure is refused; then nothing is changed
 */
export function limitsOfSchool(limits: PackLimits, chosen: SchoolLimits): Result<PackLimits> {
  const adjustable = adjustableFigures(limits);
  for (const [id, value] of Object.entries(chosen)) {
    const reason = refusal(id, value, adjustable.get(id));
    if (reason !== null) return refuse(reason);
  }
  const figure = <T>(id: string, standing: T): T | number => (Object.hasOwn(chosen, id) ? (chosen[id] ?? standing) : standing);
  const cellType = (type: CellType): CellType => (type.sort === 'own figures' ? { ...type, ...withFigures(type, (id, standing) => figure(`${type.id}/${id}`, standing)) } : type);
  return ok({
    ...limits,
    ...withFigures(limits, figure),
    landing: { ...limits.landing, value: figure('landing', limits.landing.value) },
    ...(limits.check === undefined ? {} : { check: { ...limits.check, cellTypes: limits.check.cellTypes.map(cellType) } }),
  });
}

function withFigures<Rule extends { readonly id: string; readonly value: unknown }>(
  held: { readonly rules: readonly Rule[]; readonly storageCharge: PackLimits['storageCharge'] },
  figure: <T>(id: string, standing: T) => T | number,
): { readonly rules: readonly Rule[]; readonly storageCharge: PackLimits['storageCharge'] } {
  return {
    rules: held.rules.map((rule) => ({ ...rule, value: figure(rule.id, rule.value) })),
    storageCharge: { ...held.storageCharge, target: figure('storageCharge', held.storageCharge.target) },
  };
}

function adjustableFigures(limits: PackLimits): ReadonlyMap<string, Adjustable> {
  const own = (limits.check?.cellTypes ?? []).filter((type): type is OwnFigures => type.sort === 'own figures');
  return new Map<string, Adjustable>([
    ...limits.rules.map((rule): [string, Adjustable] => [rule.id, rule]),
    ['storageCharge', limits.storageCharge],
    ['landing', limits.landing],
    ...own.flatMap((type): [string, Adjustable][] => [
      ...type.rules.map((rule): [string, Adjustable] => [`${type.id}/${rule.id}`, rule]),
      [`${type.id}/storageCharge`, type.storageCharge],
    ]),
  ]);
}

function refusal(id: string, value: number, limit: Adjustable | undefined): string | null {
  if (limit === undefined) return `there is no limit called ${id}`;
  if (limit.schoolMay === undefined) return `${id} is fixed`;
  const { min, max } = limit.schoolMay;
  return value >= min && value <= max ? null : `${id} must lie between ${min} and ${max}, got ${value}`;
}

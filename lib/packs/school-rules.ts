import { z } from 'zod';
import { limitsOfSchool } from '@/lib/core/battery/school-limits';
import type { PackLimits, SchoolRange } from '@/lib/content/model';

/** The limits a school holds its packs to: the content's, made stricter where the school has said so. */
export type SchoolPackLimits = PackLimits & {
  /** days after which a check no longer counts; absent: the school has set none */
  readonly checkDays?: number;
};

/** What a school may set for its packs besides figures of the content; days. */
export const CHECK_DAYS: SchoolRange = { min: 1, max: 180 };

/** What stands in a school's rules, as JSON. */
export const SchoolRulesSchema = z.object({
  /** own figures by the id of the limit */
  packLimits: z.record(z.string(), z.number()).default({}),
  checkDays: z.number().int().min(CHECK_DAYS.min).max(CHECK_DAYS.max).optional(),
});
export type SchoolRules = z.output<typeof SchoolRulesSchema>;

/**
 * Returns the limits in force in a school. A figure that no longer fits, since an edition fixed it or narrowed its range,
 * leaves the content's: never a looser one.
 */
export function limitsInForce(limits: PackLimits, rules: SchoolRules): SchoolPackLimits {
  const own = Object.entries(rules.packLimits).reduce((held: PackLimits, [id, value]) => {
    const stricter = limitsOfSchool(limits, { [id]: value });
    const both = stricter.ok ? limitsOfSchool(held, { [id]: value }) : stricter;
    return both.ok ? both.value : held;
  }, limits);
  return rules.checkDays === undefined ? own : { ...own, checkDays: rules.checkDays };
}

/** A figure of the content that a school may set. */
export interface AdjustableLimit {
  readonly id: string;
  readonly text: string;
  /** of the rule that uses it: which figure it is held against */
  readonly measure: string | null;
  readonly unit: string;
  readonly standing: number;
  readonly range: SchoolRange;
}

/** Returns every figure a school may set, in the order of the content. */
export function adjustableLimits(limits: PackLimits): readonly AdjustableLimit[] {
  const unitOf = (measure: string): string => limits.check?.measures.find(({ id }) => id === measure)?.unit ?? '';
  const rules = limits.rules.flatMap(({ id, text, measure, value, schoolMay }) => adjustable(schoolMay, value, { id, text, measure, unit: unitOf(measure) }));
  const storage = adjustable(limits.storageCharge.schoolMay, limits.storageCharge.target, { id: 'storageCharge', text: 'storage charge aimed at', measure: null, unit: 'V a cell' });
  const landing = adjustable(limits.landing.schoolMay, limits.landing.value, { id: 'landing', text: 'landed at the latest, under load or just after', measure: null, unit: 'V a cell' });
  const cells = (limits.check?.cellTypes ?? []).flatMap((type) => (type.sort === 'own figures' ? [
    ...type.rules.flatMap(({ id, value, schoolMay }) => {
      const like = limits.rules.find((rule) => rule.id === id);
      return adjustable(schoolMay, value, { id: `${type.id}/${id}`, text: `${like?.text ?? id} (cells full at ${type.label})`, measure: like?.measure ?? null, unit: unitOf(like?.measure ?? '') });
    }),
    ...adjustable(type.storageCharge.schoolMay, type.storageCharge.target, { id: `${type.id}/storageCharge`, text: `storage charge aimed at (cells full at ${type.label})`, measure: null, unit: 'V a cell' }),
  ] : []));
  return [...rules, ...storage, ...landing, ...cells];
}

function adjustable(range: SchoolRange | undefined, standing: unknown, limit: Omit<AdjustableLimit, 'standing' | 'range'>): readonly AdjustableLimit[] {
  return range === undefined || typeof standing !== 'number' ? [] : [{ ...limit, standing, range }];
}

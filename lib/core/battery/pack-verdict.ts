import type { PackLimits, PackRule, PackVerdict } from '@/lib/content/model';

/** What a check of one pack found, by the measures the rules name; undefined or absent when not measured. */
export type PackMeasures = Readonly<Record<string, number | boolean | undefined>>;

/** A rule that fired, with what was measured and the limit it was held against. */
export interface FiredRule {
  readonly id: string;
  readonly verdict: PackVerdict;
  readonly text: string;
  readonly measure: string;
  readonly measured: number | boolean;
  readonly op: PackRule['op'];
  readonly limit: number | boolean;
}
export interface PackCheckResult {
  /** the most urgent of the rules that fired, else the mildest; null when nothing at all was measured */
  readonly verdict: PackVerdict | null;
  /** most urgent first, then in the order of the rules */
  readonly fired: readonly FiredRule[];
  /** measures that some rule wants and nobody took; they fired nothing and must be shown */
  readonly missing: readonly string[];
}

/**
 * Verdict of a pack check: every rule whose measure is known is tried, the most urgent that fires decides
 * (the content's order; isolating comes before retiring). A pack of which nothing is known has no
 * verdict: not looking must never come out as fit.
 * @throws when a measure has not the kind its rule wants, or is no finite number
 */
export function packVerdict(limits: PackLimits, measures: PackMeasures): PackCheckResult {
  const known = limits.rules.filter((rule) => measureOf(measures, rule.measure) !== undefined);
  const missing = [...new Set(limits.rules.filter((rule) => !known.includes(rule)).map((rule) => rule.measure))];
  const urgency = (verdict: PackVerdict): number => limits.order.indexOf(verdict);
  const fired = known
    .flatMap((rule) => firing(rule, measureOf(measures, rule.measure)))
    .sort((one, other) => urgency(other.verdict) - urgency(one.verdict));
  const verdict = known.length === 0 ? null : (fired[0]?.verdict ?? limits.order[0] ?? null);
  return { verdict, fired, missing };
}

function measureOf(measures: PackMeasures, name: string): number | boolean | undefined {
  return Object.hasOwn(measures, name) ? measures[name] : undefined;
}

function firing(rule: PackRule, measured: number | boolean | undefined): readonly FiredRule[] {
  if (measured === undefined || !holds(rule, measured)) return [];
  return [{ id: rule.id, verdict: rule.verdict, text: rule.text, measure: rule.measure, measured, op: rule.op, limit: rule.value }];
}

function holds(rule: PackRule, measured: number | boolean): boolean {
  if (typeof measured !== typeof rule.value) throw new Error(`${rule.measure} is not of the kind that rule ${rule.id} wants`);
  if (rule.op === '=') return measured === rule.value;
  if (typeof measured !== 'number' || typeof rule.value !== 'number' || !Number.isFinite(measured)) {
    throw new Error(`rule ${rule.id} compares finite numbers only`);
  }
  if (rule.op === '<') return measured < rule.value;
  return rule.op === '>' ? measured > rule.value : measured >= rule.value;
}

import type { PackLimits, PackRule, PackUse, PackVerdict } from '@/lib/content/model';
import { limitsOfPack } from './limits-of-pack';
import { measureOf, type MeasureValue, type PackMeasures } from './pack-measures';
import { firedBy } from './fired-by';

/** A rule that fired, with what was measured and the limit it was held against. */
export interface FiredRule {
  readonly id: string;
  readonly verdict: PackVerdict;
  readonly text: string;
  readonly measure: string;
  /** "not sure" where doubt counts as the sign */
  readonly measured: MeasureValue;
  readonly op: PackRule['op'];
  readonly limit: MeasureValue;
  /** what it stops; null where the edition does not say */
  readonly blocks: readonly PackUse[] | null;
}
export interface TriedRules {
  /** most urgent first, then in the order of the rules */
  readonly fired: readonly FiredRule[];
  /** measures that say nothing about this kind of cell, with the reason */
  readonly notJudged: ReadonlyMap<string, string>;
}

/** Tries every rule on what is known, with the figures of the pack's own kind of cell. */
export function firedRules(limits: PackLimits, measures: PackMeasures): TriedRules {
  const cellType = measureOf(measures, 'cellType');
  const own = limitsOfPack(limits, cellType.is === 'value' ? String(cellType.value) : null);
  const byCell = (limits.check?.measures ?? []).filter((measure) => measure.byCell === true);
  const notJudged = new Map(own.ok ? [] : byCell.map(({ id }) => [id, own.reason]));
  const rules = own.ok ? own.value.rules : limits.rules.filter((rule) => !notJudged.has(rule.measure));
  const urgency = (rule: FiredRule): number => limits.order.indexOf(rule.verdict);
  const fired = rules.flatMap((rule) => firing(rule, firedBy(rule, measures)));
  return { fired: fired.sort((one, other) => urgency(other) - urgency(one)), notJudged };
}

function firing(rule: PackRule, measured: MeasureValue | null): readonly FiredRule[] {
  if (measured === null) return [];
  const { id, verdict, text, measure, op, value, blocks } = rule;
  return [{ id, verdict, text, measure, measured, op, limit: value, blocks: blocks ?? null }];
}

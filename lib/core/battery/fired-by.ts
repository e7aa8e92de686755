import type { PackRule, PackTest } from '@/lib/content/model';
import { type MeasureValue, measureOf, NOT_SURE, type PackMeasures } from './pack-measures';

/**
 * What fires a rule: the value measured, or "not sure" where doubt counts as the sign; null when the rule does
 * not fire. An exception (`unless`) has to be known to hold: what nobody knows clears nothing.
 * @throws when a measure has not the kind its rule wants, or is no finite number
 */
export function firedBy(rule: PackRule, measures: PackMeasures): MeasureValue | null {
  const known = measureOf(measures, rule.measure);
  const sign = known.is === 'value' ? holds(rule, known.value) : known.is === 'doubt' && rule.doubtCounts === true;
  if (!sign || isCleared(rule, measures)) return null;
  return known.is === 'value' ? known.value : NOT_SURE;
}

function isCleared({ unless }: PackRule, measures: PackMeasures): boolean {
  if (unless === undefined) return false;
  const known = measureOf(measures, unless.measure);
  return known.is === 'value' && holds(unless, known.value);
}

function holds(test: PackTest, measured: MeasureValue): boolean {
  if (typeof measured !== typeof test.value) throw new Error(`${test.measure} is a ${typeof measured}, its rule wants a ${typeof test.value}`);
  if (typeof measured === 'number' && !Number.isFinite(measured)) throw new Error(`${test.measure} must be a finite number`);
  switch (test.op) {
    case '=': return measured === test.value;
    case '<': return measured < test.value;
    case '>': return measured > test.value;
    case '>=': return measured >= test.value;
  }
}

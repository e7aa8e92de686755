import { at } from '@/lib/core/at';
import type { ClosedEvaluation, ClosedRisk } from './closed-form';

/**
 * Order of scenarios by mean harm; ties by severity, then id. What has no exposure comes last, by id
 * (amendments A10, A12).
 * @returns indices of scenarios, most harm first
 */
export function rankedIndices(evaluation: ClosedEvaluation, ids: readonly string[]): readonly number[] {
  const order = evaluation.risks.map((risk, index) => ({ risk, index, id: at(ids, index) }));
  order.sort((one, other) => {
    const apart = Number(isNone(one.risk)) - Number(isNone(other.risk));
    if (apart !== 0) return apart;
    if (!isNone(one.risk)) {
      if (one.risk.harm !== other.risk.harm) return other.risk.harm - one.risk.harm;
      if (one.risk.severity !== other.risk.severity) return other.risk.severity - one.risk.severity;
    }
    return one.id < other.id ? -1 : 1;
  });
  return order.map((one) => one.index);
}

const isNone = (risk: ClosedRisk): boolean => risk.grade === 'not applicable';

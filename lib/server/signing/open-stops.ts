import { stillAccepted } from '@/lib/assessments/acceptance';
import type { StopResult } from '@/lib/core/result';
import type { VersionInFull } from './material';

/** Stop conditions that hold and that no acceptance covers today. */
export function openStops({ scored, material }: VersionInFull, today: string): readonly StopResult[] {
  const accepted = new Set(material.acceptances.filter((one) => stillAccepted(one, today)).map((one) => one.stopId));
  return scored.result.stops.filter((stop) => !accepted.has(stop.id));
}

/** Risks that grade extreme as they are today. */
export function extremeRisks({ scored }: Pick<VersionInFull, 'scored'>): readonly string[] {
  return scored.result.risks.filter((risk) => risk.grade === 'extreme').map((risk) => risk.title);
}

import type { AssessmentDocument } from '@/lib/core/document';
import type { Assessment } from './assessment-schema';

/** @returns what the calculation reads of an assessment: states without their reasons, nothing that only describes */
export function toDocument(assessment: Assessment): AssessmentDocument {
  const { id, title, answers, notSureTicks, exposures, inputs, states, record, planned, effortBudget, matrix, seed, contentVersion } = assessment;
  return {
    id, title, answers, notSureTicks, exposures, inputs, record, planned, effortBudget, matrix, seed, contentVersion,
    states: states && Object.fromEntries(Object.entries(states).map(([control, given]) => [control, typeof given === 'string' ? given : given.state])),
  };
}

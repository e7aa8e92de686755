import { type Assessment, AssessmentSchema, FORMAT } from './assessment-schema';

/**
 * An assessment as the text of a `sandbucket-assessment.v1` document, its parts in the order of the format.
 * @throws a ZodError when a part does not have the shape of the format: it was put together wrongly by us
 */
export function writeAssessment(assessment: Omit<Assessment, 'format'>): string {
  return `${JSON.stringify(AssessmentSchema.parse({ ...assessment, format: FORMAT }), null, 1)}\n`;
}

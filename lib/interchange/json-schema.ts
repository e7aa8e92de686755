import { z } from 'zod';
import { AssessmentSchema, FORMAT } from './assessment-schema';

/**
 * The shape of a document as JSON Schema (draft 2020-12), written from the schema the app itself reads with.
 * It knows shape and ranges; whether an id exists depends on the edition and is checked on reading.
 * @returns the text of the schema file
 */
export function assessmentJsonSchema(): string {
  const { $schema, ...schema } = z.toJSONSchema(AssessmentSchema);
  return `${JSON.stringify({ $schema, $id: `${FORMAT}.schema.json`, ...schema }, null, 2)}\n`;
}

import { z } from 'zod';
import { finite, rangeSchema, text } from './parts';

const verdict = z.enum(['fit', 'watch', 'retire', 'isolate']);
const packRule = z.strictObject({
  id: text,
  measure: text,
  op: z.enum(['<', '>', '>=', '=']),
  value: z.union([finite, z.boolean()]),
  verdict,
  text,
  kind: text,
  source: text,
  schoolMay: rangeSchema.optional(),
});
const limit = { value: finite, unit: text, kind: text, source: text };

export const packLimitsSchema = z.strictObject({
  rules: z.array(packRule).min(1),
  order: z.array(verdict),
  silentBelow: finite,
  rule: text,
  storageCharge: z.strictObject({ low: finite, target: finite, high: finite, unit: text, kind: text, source: text, schoolMay: rangeSchema, note: text }),
  full: z.strictObject(limit),
  landing: z.strictObject({ ...limit, note: text, schoolMay: rangeSchema }),
  daysFull: z.strictObject(limit),
});

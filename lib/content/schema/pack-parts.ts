import { z } from 'zod';
import { finite, rangeSchema, text } from './parts';

export const packVerdict = z.enum(['fit', 'watch', 'retire', 'isolate', 'leave']);
export const packUse = z.enum(['charge', 'fly', 'travel']);

/** Fields of one measure held against one figure. */
export const packTest = {
  measure: text,
  op: z.enum(['<', '>', '>=', '=']),
  value: z.union([finite, z.boolean(), text]),
};

export const figureSchema = z.strictObject({ value: finite, unit: text, kind: text, source: text });
export const storageWindowSchema = z.strictObject({
  low: finite, target: finite, high: finite, unit: text, kind: text, source: text, schoolMay: rangeSchema, note: text,
});

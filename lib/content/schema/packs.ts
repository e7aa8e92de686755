import { z } from 'zod';
import { packCheckSchema } from './pack-check';
import { figureSchema, packTest, packUse, packVerdict, storageWindowSchema } from './pack-parts';
import { finite, rangeSchema, text } from './parts';

const packRule = z.strictObject({
  id: text,
  ...packTest,
  verdict: packVerdict,
  text,
  kind: text,
  source: text,
  schoolMay: rangeSchema.optional(),
  blocks: z.array(packUse).optional(),
  unless: z.strictObject(packTest).optional(),
  doubtCounts: z.boolean().optional(),
  follows: text.optional(),
});

export const packLimitsSchema = z.strictObject({
  rules: z.array(packRule).min(1),
  order: z.array(packVerdict),
  silentBelow: finite,
  rule: text,
  storageCharge: storageWindowSchema,
  full: figureSchema,
  landing: figureSchema.extend({ note: text, schoolMay: rangeSchema }),
  daysFull: figureSchema,
  check: packCheckSchema.optional(),
});

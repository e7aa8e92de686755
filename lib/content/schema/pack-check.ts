import { z } from 'zod';
import { figureSchema, packUse, packVerdict, storageWindowSchema } from './pack-parts';
import { finite, rangeSchema, text } from './parts';

const measure = z.strictObject({
  id: text,
  ask: text,
  values: z.enum(['yes or no', 'number', 'cell type']),
  unit: text.nullable(),
  definition: text.optional(),
  byCell: z.boolean().optional(),
});
const step = z.strictObject({ id: text, title: text, how: text, measures: z.array(text).min(1), handles: z.boolean() });
const verdictWords = z.strictObject({ verdict: packVerdict, title: text, words: text, confirm: text });
const incomplete = z.strictObject({ needs: z.array(z.array(text).min(1)), verdict: packVerdict, blocks: z.array(packUse), text, kind: text, source: text });

const cell = { id: text, label: text };
const ownRule = z.strictObject({ id: text, value: finite, kind: text, source: text, schoolMay: rangeSchema.optional() });
const cellType = z.discriminatedUnion('sort', [
  z.strictObject({ ...cell, sort: z.literal('standard'), nominal: figureSchema }),
  z.strictObject({ ...cell, sort: z.literal('own figures'), nominal: figureSchema, full: figureSchema, storageCharge: storageWindowSchema, rules: z.array(ownRule) }),
  z.strictObject({ ...cell, sort: z.literal('as standard'), why: text }),
  z.strictObject({ ...cell, sort: z.literal('out of scope'), why: text }),
]);

const release = z.strictObject({
  by: text, cause: text, hoursApart: figureSchema, neverAfter: z.array(packVerdict), noSign: z.array(text), words: text, confirm: text,
});

/** How packs are checked, since the second edition. */
export const packCheckSchema = z.strictObject({
  measures: z.array(measure).min(1),
  steps: z.array(step).min(1),
  verdicts: z.array(verdictWords),
  incomplete,
  cellTypes: z.array(cellType),
  alike: z.strictObject({ temperature: figureSchema, cellVoltage: figureSchema, why: text }),
  isolation: z.strictObject({ words: text, places: z.array(z.strictObject({ id: text, label: text })) }),
  release,
});

import { z } from 'zod';
import { finite, gradeSchema, inputValueSchema, severityClassSchema, share, text } from './parts';

export const controlSchema = z.strictObject({
  id: text,
  title: text,
  role: z.enum(['prevent', 'mitigate', 'both']),
  tier: z.enum(['eliminate', 'substitute', 'engineer', 'administer', 'protect']),
  pfd: z.number().gt(0).lt(1),
  errorFactor: z.number().gt(1),
  kind: text,
  basis: text,
  group: text.nullable(),
  effort: z.strictObject({ hours: z.number().min(0), moneyBand: z.int().min(0) }),
  goodLooksLike: text,
  moves: z.array(z.strictObject({ input: text, to: inputValueSchema, only: z.enum(['always', 'if lower', 'if higher']) })).min(1).optional(),
});

const area = z.enum(['charging', 'storage', 'arena', 'vehicle']);
const packs = z.enum(['one', 'lot', 'all', 'damaged', 'damagedAll', 'transit']);
const severityRule = z.union([
  z.strictObject({ fixed: severityClassSchema, basis: text.optional() }),
  z.strictObject({ from: z.literal('smoke'), area, packs, near: z.boolean(), foundLater: z.boolean(), sharedBy: z.array(text).min(1).optional() }),
  z.strictObject({ from: z.literal('heat'), what: z.enum(['burn', 'spread']), area, packs }),
]);
const use = z.strictObject({ control: text, reach: z.number().gt(0).max(1) });

const branchSchema = z.strictObject({
  id: text,
  title: text,
  consequence: z.enum(['people-smoke', 'people-burn', 'people-impact', 'spread-room', 'programme']),
  conditional: z.strictObject({ p: z.number().gt(0).max(1), errorFactor: z.number().min(1), kind: text, basis: text }),
  mitigating: z.array(use),
  severity: severityRule,
});

export const scenarioSchema = z.strictObject({
  id: text,
  title: text,
  description: text,
  exposureBase: text,
  rate: z.strictObject({ mean: z.number().gt(0), errorFactor: z.number().gt(1), kind: text, basis: text }),
  fireShare: share,
  preventive: z.array(use),
  branches: z.array(branchSchema).min(1),
});

export const severityScaleSchema = z.array(z.strictObject({ class: severityClassSchema, people: text, building: text, programme: text }));
export const harmWeightsSchema = z.strictObject({ 1: finite, 2: finite, 3: finite, 4: finite, 5: finite });

const likelihood = z.array(z.strictObject({ level: z.int().min(1), word: text, from: z.number().min(0), to: z.number().gt(0).nullable(), onceIn: text }));
const byGrade = z.strictObject({ low: text, moderate: text, high: text, extreme: text });

export const matrixSchema = z.strictObject({
  id: text,
  likelihood: likelihood.min(1),
  severity: z.array(z.int().min(1).max(5)),
  score: text,
  grades: z.array(z.strictObject({ grade: gradeSchema, from: finite, to: finite })),
  meaning: byGrade.optional(),
  rule: text,
  kind: text,
  source: text,
});

export const gradeTableSchema = z.strictObject({
  id: text,
  title: text,
  gradeWords: byGrade,
  levels: likelihood.min(1),
  cells: z.array(z.array(gradeSchema)),
  kind: text,
  source: text,
});

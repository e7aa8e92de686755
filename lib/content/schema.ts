import { z } from 'zod';
import type { Content } from './model';
import { exposureSchema, inputSchema, pageSchema, questionSchema, stopSchema } from './schema/asked';
import { guidanceSchema } from './schema/guidance';
import { finite, text } from './schema/parts';
import { packLimitsSchema } from './schema/packs';
import {
  aeglSchema, airClassSchema, constantSchema, idlhSchema, packCountRuleSchema, reentrySchema, restVoltageSchema, ruleSchema, spreadSchema,
} from './schema/physics';
import { controlSchema, gradeTableSchema, harmWeightsSchema, matrixSchema, scenarioSchema, severityScaleSchema } from './schema/risk';

const titled = z.strictObject({ id: text, title: text });

/** The shape of one edition. References between its parts and ranges of the trade are `checks.ts`. */
const ContentSchema = z.strictObject({
  format: z.literal('sandbucket-content.v1'),
  edition: z.int().min(1).optional(),
  version: z.string().regex(/^\d+\.\d+\.\d+$/),
  note: text,
  ranges: z.strictObject({ pfdMin: finite, procedureMin: finite, zQuantile95: finite }),
  groups: z.array(titled),
  controls: z.array(controlSchema),
  moneyBands: z.array(z.strictObject({ band: z.int().min(0), title: text, points: z.number().min(0) })),
  effortRule: text,
  severityScale: severityScaleSchema,
  harmWeights: harmWeightsSchema,
  matrices: z.array(matrixSchema).min(1),
  inputs: z.array(inputSchema),
  exposures: z.array(exposureSchema),
  scenarios: z.array(scenarioSchema),
  physics: z.array(spreadSchema),
  constants: z.array(constantSchema),
  models: z.looseObject({
    timeToAegl: z.strictObject({ compares: z.literal('whole exposure'), rule: z.string() }).optional(),
    outdoorAir: z.strictObject({ volume: z.literal('at least the room'), rule: z.string() }).optional(),
  }),
  aegl: aeglSchema,
  idlh: idlhSchema,
  reentry: reentrySchema,
  smokeRule: ruleSchema,
  heatRule: ruleSchema,
  packCountRule: packCountRuleSchema,
  packLimits: packLimitsSchema,
  defaultEffortBudget: z.number().min(0),
  stateRules: z.record(z.string(), text),
  sections: z.array(titled),
  questions: z.array(questionSchema),
  stops: z.array(stopSchema),
  pages: z.array(pageSchema).optional(),
  tableMatrices: z.array(gradeTableSchema).optional(),
  restVoltage: restVoltageSchema.optional(),
  airClasses: z.array(airClassSchema).optional(),
  guidance: guidanceSchema.optional(),
}) satisfies z.ZodType<Content>;

/**
 * The same data, known to have the shape of an edition. The data itself is handed back and not a copy,
 * so that the order of its keys stays as it was published.
 * @throws a ZodError with every fault and its path: a broken edition is a fault of ours
 */
export function asContent(data: unknown): Content {
  ContentSchema.parse(data);
  return data as Content;
}

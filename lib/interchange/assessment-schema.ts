import { z } from 'zod';
import { aboutShape } from './schema/about';
import { between, line, whole } from './schema/leaves';
import {
  answersSchema, exposuresSchema, inputsSchema, matrixSchema, notSureTicksSchema, plannedSchema, recordSchema, statesSchema,
} from './schema/scored';

export const FORMAT = 'sandbucket-assessment.v1';

const shape = {
  $schema: line(300).optional().meta({ description: 'Where an editor finds the JSON Schema. Not read.' }),
  format: z.literal(FORMAT, { error: `"${FORMAT}"` }).meta({ description: 'Name and version of this format.' }),
  id: line(100).meta({ description: 'Id of the assessment, chosen by whoever wrote it.' }),
  title: line(200).meta({ description: 'What people call it.' }),
  contentVersion: line(40).optional().meta({ description: 'Edition of the content that the answers belong to. The one in force when missing.' }),
  ...aboutShape,
  answers: answersSchema,
  notSureTicks: notSureTicksSchema.optional(),
  exposures: exposuresSchema.optional(),
  inputs: inputsSchema.optional(),
  states: statesSchema.optional(),
  record: recordSchema.optional(),
  planned: plannedSchema.optional(),
  effortBudget: between(0, 120, 'points').optional().meta({ description: "Effort that can be spent, in points: hours, and points for money. The edition's own default when missing." }),
  matrix: matrixSchema.optional(),
  seed: whole(0, 4_294_967_295).optional().meta({ description: 'Seed of the random stream. Taken from the fingerprint of the scored parts when missing.' }),
};

/** The names a document may use at its top, for the fault on an unknown one. */
export const TOP_NAMES: readonly string[] = Object.keys(shape);

/** The shape of a `sandbucket-assessment.v1` document. Whether its ids exist is checked against an edition. */
export const AssessmentSchema = z.strictObject(shape, { error: `an object { } with "format", "id", "title" and "answers"` }).meta({
  title: FORMAT,
  description: 'One assessment of a venue: what was answered, what is written over, what the school has seen and what it plans.',
});

export type Assessment = z.infer<typeof AssessmentSchema>;

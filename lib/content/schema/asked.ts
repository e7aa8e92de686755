import { z } from 'zod';
import { conditionSchema } from './conditions';
import { controlStateSchema, finite, inputValueSchema, text } from './parts';

export const inputSchema = z.strictObject({
  id: text,
  title: text,
  unit: text,
  default: inputValueSchema,
  min: finite.nullable(),
  max: finite.nullable(),
  kind: text,
  whenNotSure: inputValueSchema.optional(),
});

export const exposureSchema = z.strictObject({ id: text, title: text, formula: text, kind: text, basis: text });

const optionSchema = z.strictObject({
  id: text,
  label: text,
  sets: z.strictObject({ controls: z.record(z.string(), controlStateSchema), inputs: z.record(z.string(), inputValueSchema) }),
});

const asked = {
  id: text,
  section: text,
  text,
  why: text,
  good: text,
  notSure: z.boolean(),
  source: text,
  showIf: conditionSchema.optional(),
};

export const questionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...asked, kind: z.literal('choice'), options: z.array(optionSchema).min(2) }),
  z.strictObject({ ...asked, kind: z.literal('multi'), options: z.array(optionSchema).min(1), unticked: z.literal('absent') }),
  z.strictObject({
    ...asked,
    kind: z.literal('number'),
    fields: z.array(z.strictObject({ input: text, label: text, unit: text, min: finite, max: finite })).min(1),
  }),
  z.strictObject({ ...asked, kind: z.literal('text'), field: z.strictObject({ input: text, maxLength: z.int().min(1) }) }),
]);

export const stopSchema = z.strictObject({ id: text, title: text, when: conditionSchema, why: text, settles: text });

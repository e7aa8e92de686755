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
  printed: z.literal(true).optional(),
});

export const exposureSchema = z.strictObject({ id: text, title: text, formula: text, kind: text, basis: text });

const option = {
  id: text,
  label: text,
  sets: z.strictObject({ controls: z.record(z.string(), controlStateSchema), inputs: z.record(z.string(), inputValueSchema) }),
  earlier: z.literal(true).optional(),
};
const optionSchema = z.strictObject(option);
const lineSchema = z.strictObject({
  ...option,
  partly: z.strictObject({ label: text, state: z.enum(['partly', 'absent']) }),
  newIn: z.int().min(2).optional(),
  fromList: z.literal('not sure').optional(),
  keeper: z.literal(true).optional(),
});
const fieldSchema = z.strictObject({
  input: text,
  label: text,
  unit: text,
  min: finite,
  max: finite,
  entry: z.enum(['minutes and seconds', 'of ten']).optional(),
  earlier: z.strictObject({ replaces: z.array(text) }).optional(),
  mayBeEmpty: z.literal(true).optional(),
  noMoreThan: text.optional(),
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
  hiddenAs: z.literal('in place').optional(),
  seconds: z.int().min(1).optional(),
  keeper: z.literal(true).optional(),
  prefilledFrom: z.array(z.enum(['site', 'area', 'packs', 'sessions'])).min(1).optional(),
};

export const questionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...asked, kind: z.literal('choice'), options: z.array(optionSchema).min(2) }),
  z.strictObject({ ...asked, kind: z.literal('multi'), options: z.array(optionSchema).min(1), unticked: z.literal('absent') }),
  z.strictObject({
    ...asked,
    kind: z.literal('ticks'),
    options: z.array(lineSchema).min(1),
    unticked: z.literal('absent'),
    acceptsListForm: z.literal(true),
  }),
  z.strictObject({ ...asked, kind: z.literal('number'), fields: z.array(fieldSchema).min(1) }),
  z.strictObject({
    ...asked,
    kind: z.literal('text'),
    field: z.strictObject({ input: text, maxLength: z.int().min(1), asks: z.enum(['telephone number', 'place']).optional() }),
  }),
]);

export const pageSchema = z.strictObject({ id: text, title: text, as: z.enum(['questions', 'rows']), questions: z.array(text).min(1) });

const acceptableSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('never'), text }),
  z.strictObject({ kind: z.literal('with-paper'), paper: text, text }),
  z.strictObject({ kind: z.literal('until'), days: z.int().min(1), replacedBy: text, text }),
]);

export const stopSchema = z.strictObject({
  id: text,
  title: text,
  when: conditionSchema,
  why: text,
  settles: text,
  acceptable: acceptableSchema.optional(),
  confirm: text.optional(),
});

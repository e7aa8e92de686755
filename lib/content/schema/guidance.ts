import { z } from 'zod';
import type { Guidance } from '../model';
import { text } from './parts';

const fieldIdSchema = z.enum(['number', 'meetingPoint', 'secondMeetingPoint', 'siteAddress', 'officerPhone']);

const fieldSchema = z.strictObject({
  id: fieldIdSchema,
  title: text,
  input: text.nullable(),
  whenNotSet: text,
  minDigits: z.int().min(0),
});

const basisSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('published'),
    // The letter and number of the reference, and how it is known: read, or from memory.
    source: z.string().regex(/^REFERENCES [A-Z]\.\d.*\((READ-[PCS]|MEM)/),
    carries: text,
  }),
  z.strictObject({ kind: z.enum(['common practice, no source', 'our judgement']), carries: text }),
]);

const neverBesideSchema = z.union([
  z.strictObject({ guidance: text, why: text }),
  z.strictObject({ shown: text, why: text }),
]);

const guidanceTextSchema = z.strictObject({
  id: text,
  title: text,
  version: z.int().min(1),
  when: text,
  audience: z.array(z.enum(['everybody', 'trained adult', 'organiser', 'officer', 'driver', 'visitor'])).min(1),
  form: z.enum(['steps', 'paragraphs']),
  lines: z.array(z.strictObject({ lead: text, text: text.optional() })).min(1),
  neverBeside: z.array(neverBesideSchema),
  confirm: z.literal('to be confirmed by the local fire service and first-aid trainer'),
  basis: z.array(basisSchema).min(1),
});

/** The shape of the guidance texts. References between them are `checks/guidance.ts`. */
export const guidanceSchema = z.strictObject({
  fields: z.array(fieldSchema).min(1),
  texts: z.array(guidanceTextSchema).min(1),
}) satisfies z.ZodType<Guidance>;

/**
 * The same data, known to be guidance texts; handed back and not a copy, as `asContent` does.
 * @throws a ZodError with every fault and its path: a broken edition is a fault of ours
 */
export function asGuidance(data: unknown): Guidance {
  guidanceSchema.parse(data);
  return data as Guidance;
}

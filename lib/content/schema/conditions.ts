import { z } from 'zod';
import type { Condition } from '../model';
import { controlStateSchema, finite, inputValueSchema, text } from './parts';

const compareOp = z.enum(['=', '!=', '<', '<=', '>', '>=']);

/** A condition as data, nested as deep as it likes. */
export const conditionSchema: z.ZodType<Condition> = z.lazy(() => z.union([
  z.strictObject({ control: text, in: z.array(controlStateSchema).min(1) }),
  z.strictObject({ input: text, op: compareOp, value: inputValueSchema, measure: z.literal('digits').optional() }),
  z.strictObject({
    derived: z.enum(['storedWh', 'loadShare', 'chargingLotSmokeClass']),
    op: compareOp,
    value: finite.optional(),
    input: text.optional(),
  }),
  z.strictObject({ all: z.array(conditionSchema).min(1) }),
  z.strictObject({ any: z.array(conditionSchema).min(1) }),
]));

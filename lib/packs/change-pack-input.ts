import { z } from 'zod';
import { line } from '@/lib/forms/fields';
import { PackInputSchema } from './pack-input';

/** The form of a pack that is in the register already: which one, and from which revision it was filled in. */
export const ChangePackSchema = z.intersection(
  z.object({ packId: line('Choose a pack'), revision: z.coerce.number().int() }).transform((target) => ({ target })),
  PackInputSchema.transform((input) => ({ input })),
).transform(({ target, input }) => ({ ...target, input }));

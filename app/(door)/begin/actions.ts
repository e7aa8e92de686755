'use server';

import { BeginInputSchema } from '@/lib/people/begin';
import { openAction } from '@/lib/server/forms/open-action';
import { beginSchool } from '@/lib/server/people/begin-school';

/** Open to anybody while there is no school; closed for good once there is one. */
export const beginAction = openAction({ schema: BeginInputSchema, run: beginSchool });

'use server';

import { AcceptInputSchema } from '@/lib/people/invitation';
import { openAction } from '@/lib/server/forms/open-action';
import { acceptInvitation } from '@/lib/server/people/accept';

/** Open to whoever holds the link. */
export const acceptAction = openAction({ schema: AcceptInputSchema, run: acceptInvitation });

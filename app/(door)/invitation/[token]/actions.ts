'use server';

import { AcceptInputSchema, JoinInputSchema, TokenSchema } from '@/lib/people/invitation';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { openAction } from '@/lib/server/forms/open-action';
import { acceptInvitation } from '@/lib/server/people/accept';
import { joinSchool, leaveToSomebodyElse } from '@/lib/server/people/join';

/** Open to whoever holds the link. */
export const acceptAction = openAction({ schema: AcceptInputSchema, run: acceptInvitation });

/** Whoever is signed in and holds the link: no role of the present school has a say in another one. */
export const joinAction = guardedAction({ may: null, schema: JoinInputSchema, run: (input, actor) => joinSchool(actor, input) });

export const signOutAction = openAction({ schema: TokenSchema, run: leaveToSomebodyElse });

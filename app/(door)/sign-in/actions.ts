'use server';

import { SignInInputSchema } from '@/lib/people/sign-in';
import { signIn } from '@/lib/server/auth/sign-in';
import { openAction } from '@/lib/server/forms/open-action';

/** Anybody may try to sign in. */
export const signInAction = openAction({ schema: SignInInputSchema, run: signIn });

'use server';

import { NewPasswordInputSchema } from '@/lib/people/password-link';
import { openAction } from '@/lib/server/forms/open-action';
import { setNewPassword } from '@/lib/server/people/password-links';

/** Open to whoever holds the link. */
export const newPasswordAction = openAction({ schema: NewPasswordInputSchema, run: setNewPassword });

'use server';

import { MemberStateInputSchema } from '@/lib/people/member-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { makePasswordLink } from '@/lib/server/people/password-links';

export const passwordLinkAction = guardedAction({ may: 'people.change', schema: MemberStateInputSchema, run: (input, actor) => makePasswordLink(actor, input) });

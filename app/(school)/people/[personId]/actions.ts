'use server';

import { ForgetPersonSchema, MemberStateInputSchema } from '@/lib/people/member-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { forgetPerson } from '@/lib/server/people/forget-person';
import { makePasswordLink } from '@/lib/server/people/password-links';

export const passwordLinkAction = guardedAction({ may: 'people.change', schema: MemberStateInputSchema, run: (input, actor) => makePasswordLink(actor, input) });

export const forgetPersonAction = guardedAction({ may: 'people.change', schema: ForgetPersonSchema, run: (input, actor) => forgetPerson(actor, input) });

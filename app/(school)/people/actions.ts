'use server';

import { InviteInputSchema, RevokeInputSchema } from '@/lib/people/invitation';
import { MemberStateInputSchema, RoleInputSchema } from '@/lib/people/member-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { changeRole, closeAccount, reopenAccount } from '@/lib/server/people/change-member';
import { invite, revokeInvitation } from '@/lib/server/people/invite';

export const inviteAction = guardedAction({ may: 'people.invite', schema: InviteInputSchema, run: (input, actor) => invite(actor, input) });

export const revokeInvitationAction = guardedAction({ may: 'people.invite', schema: RevokeInputSchema, run: (input, actor) => revokeInvitation(actor, input) });

export const changeRoleAction = guardedAction({ may: 'people.change', schema: RoleInputSchema, run: (input, actor) => changeRole(actor, input) });

export const closeAccountAction = guardedAction({ may: 'people.change', schema: MemberStateInputSchema, run: (input, actor) => closeAccount(actor, input) });

export const reopenAccountAction = guardedAction({ may: 'people.change', schema: MemberStateInputSchema, run: (input, actor) => reopenAccount(actor, input) });

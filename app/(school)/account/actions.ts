'use server';

import { redirect } from 'next/navigation';
import { ChangePasswordInputSchema } from '@/lib/people/change-password';
import { requireActor } from '@/lib/server/actor';
import { changePassword } from '@/lib/server/auth/change-password';
import { endAllSessions, endSession } from '@/lib/server/auth/sessions';
import { chooseSchool, ChooseSchoolSchema } from '@/lib/server/people/choose-school';
import { guardedAction } from '@/lib/server/forms/guarded-action';

/** What belongs to one's own account is open to every role. */
export const changePasswordAction = guardedAction({ may: null, schema: ChangePasswordInputSchema, run: (input, actor) => changePassword(actor, input) });

export const chooseSchoolAction = guardedAction({ may: null, schema: ChooseSchoolSchema, run: (input, actor) => chooseSchool(actor, input) });

export async function signOutHere(): Promise<void> {
  await endSession();
  redirect('/sign-in?out');
}

export async function signOutEverywhere(): Promise<void> {
  await requireActor();
  await endAllSessions();
  redirect('/sign-in?out');
}

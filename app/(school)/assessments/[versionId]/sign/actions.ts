'use server';

import { SignOffSchema } from '@/lib/assessments/signing-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { signOff } from '@/lib/server/signing/sign-off';

export const signOffAction = guardedAction({ may: 'assessment.sign-as-officer', schema: SignOffSchema, run: (input, actor) => signOff(actor, input) });

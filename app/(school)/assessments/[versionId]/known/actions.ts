'use server';

import { ConfirmKnownSchema } from '@/lib/assessments/assessment-input';
import { confirmKnown } from '@/lib/server/assessments/known';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const confirmKnownAction = guardedAction({ may: 'assessment.answer', schema: ConfirmKnownSchema, run: (input, actor) => confirmKnown(actor, input) });

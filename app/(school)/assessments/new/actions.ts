'use server';

import { BeginAssessmentSchema, BeginNextSchema } from '@/lib/assessments/assessment-input';
import { begin, beginNext } from '@/lib/server/assessments/begin';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const beginAction = guardedAction({ may: 'assessment.begin', schema: BeginAssessmentSchema, run: (input, actor) => begin(actor, { ...input, copyFromId: null }) });

export const beginNextAction = guardedAction({ may: 'assessment.begin', schema: BeginNextSchema, run: (input, actor) => beginNext(actor, input) });

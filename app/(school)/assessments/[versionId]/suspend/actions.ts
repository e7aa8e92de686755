'use server';

import { SettleReviewSchema, SuspendSchema } from '@/lib/assessments/signing-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { liftSuspension, settleReview, suspendAssessment } from '@/lib/server/signing/officer-acts';

export const suspendAction = guardedAction({ may: 'assessment.suspend', schema: SuspendSchema, run: (input, actor) => suspendAssessment(actor, input) });
export const liftAction = guardedAction({ may: 'assessment.lift-suspension', schema: SuspendSchema, run: (input, actor) => liftSuspension(actor, input) });
export const settleReviewAction = guardedAction({ may: 'assessment.settle-review', schema: SettleReviewSchema, run: (input, actor) => settleReview(actor, input) });

'use server';

import { CommentSchema, LookSchema, OfCommentSchema } from '@/lib/assessments/comments';
import { AcceptStopSchema, ReturnSchema } from '@/lib/assessments/signing-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { comment, look, settle, takeBack } from '@/lib/server/signing/comments';
import { acceptStop, returnAssessment } from '@/lib/server/signing/officer-acts';

export const commentAction = guardedAction({ may: 'assessment.comment', schema: CommentSchema, run: (input, actor) => comment(actor, input) });
export const settleCommentAction = guardedAction({ may: 'assessment.comment', schema: OfCommentSchema, run: (input, actor) => settle(actor, input) });
export const takeBackCommentAction = guardedAction({ may: 'assessment.comment', schema: OfCommentSchema, run: (input, actor) => takeBack(actor, input) });
export const lookAction = guardedAction({ may: 'assessment.look', schema: LookSchema, run: (input, actor) => look(actor, input) });
export const returnAction = guardedAction({ may: 'assessment.return', schema: ReturnSchema, run: (input, actor) => returnAssessment(actor, input) });
export const acceptStopAction = guardedAction({ may: 'assessment.accept-stop', schema: AcceptStopSchema, run: (input, actor) => acceptStop(actor, input) });

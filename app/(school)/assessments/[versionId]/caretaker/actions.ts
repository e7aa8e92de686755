'use server';

import { SendQuestionsSchema, TakeLinkBackSchema } from '@/lib/assessments/caretaker';
import { sendToCaretaker, takeLinkBack } from '@/lib/server/assessments/send-questions';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const sendQuestionsAction = guardedAction({ may: 'assessment.send-questions', schema: SendQuestionsSchema, run: (input, actor) => sendToCaretaker(actor, input) });

export const takeLinkBackAction = guardedAction({ may: 'assessment.send-questions', schema: TakeLinkBackSchema, run: (input, actor) => takeLinkBack(actor, input) });

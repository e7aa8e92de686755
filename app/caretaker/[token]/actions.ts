'use server';

import { answerAsCaretaker, CaretakerAnswersSchema } from '@/lib/server/assessments/caretaker-page';
import { openAction } from '@/lib/server/forms/open-action';

export const answerAsCaretakerAction = openAction({ schema: CaretakerAnswersSchema, run: answerAsCaretaker });

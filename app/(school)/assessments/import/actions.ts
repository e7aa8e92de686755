'use server';

import { ImportInputSchema } from '@/lib/assessments/import-input';
import { importAssessment } from '@/lib/server/assessments/import';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const importAction = guardedAction({ may: 'assessment.begin', schema: ImportInputSchema, run: (input, actor) => importAssessment(actor, input) });

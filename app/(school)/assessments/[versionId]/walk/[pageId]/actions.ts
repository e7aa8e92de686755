'use server';

import { SavePageSchema } from '@/lib/assessments/save-page-input';
import { type SavePageData, savePage } from '@/lib/server/assessments/save-page';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const savePageAction = guardedAction<typeof SavePageSchema, SavePageData>({ may: 'assessment.answer', schema: SavePageSchema, run: (input, actor) => savePage(actor, input) });

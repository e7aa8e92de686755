'use server';

import { AddActionSchema } from '@/lib/assessments/action-input';
import { addAction } from '@/lib/server/actions/write-actions';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const addActionAction = guardedAction({ may: 'action.add', schema: AddActionSchema, run: (input, actor) => addAction(actor, input) });

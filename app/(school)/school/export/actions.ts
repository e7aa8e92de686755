'use server';

import { RetentionSchema } from '@/lib/people/retention';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { changeRetention } from '@/lib/server/retention/retention';

export const changeRetentionAction = guardedAction({ may: 'school.change', schema: RetentionSchema, run: (input, actor) => changeRetention(actor, input) });

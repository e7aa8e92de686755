'use server';

import { RulesPostSchema } from '@/lib/packs/school-rules-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { changeRules } from '@/lib/server/people/change-rules';

export const changeRulesAction = guardedAction({ may: 'school.change', schema: RulesPostSchema, run: (input, actor) => changeRules(actor, input) });

'use server';

import { SchoolChangeSchema } from '@/lib/people/school-fields';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { changeSchool } from '@/lib/server/people/change-school';

export const changeSchoolAction = guardedAction({ may: 'school.change', schema: SchoolChangeSchema, run: (input, actor) => changeSchool(actor, input) });

'use server';

import { HandOverSchema } from '@/lib/assessments/signing-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { handOver } from '@/lib/server/signing/hand-over';

export const handOverAction = guardedAction({ may: 'assessment.submit', schema: HandOverSchema, run: (input, actor) => handOver(actor, input) });

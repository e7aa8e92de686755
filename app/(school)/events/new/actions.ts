'use server';

import { BeginEventSchema } from '@/lib/events/event-input';
import { begin } from '@/lib/server/events/write-events';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const beginAction = guardedAction({ may: 'event.begin', schema: BeginEventSchema, run: (input, actor) => begin(actor, input) });

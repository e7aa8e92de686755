'use server';

import { guardedAction } from '@/lib/server/forms/guarded-action';
import { beginSession } from '@/lib/server/sessions/write-sessions';
import { OpenSessionSchema } from '@/lib/sessions/open-session';

export const openSessionAction = guardedAction({ may: 'session.log', schema: OpenSessionSchema, run: (input, actor) => beginSession(actor, input) });

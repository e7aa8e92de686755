'use server';

import { guardedAction } from '@/lib/server/forms/guarded-action';
import { correctSession, endSession, logInSession } from '@/lib/server/sessions/write-sessions';
import { CloseSessionSchema } from '@/lib/sessions/close-session';
import { CorrectLogSchema, LogPacksSchema } from '@/lib/sessions/log-packs';

export const logPacksAction = guardedAction({ may: 'session.log', schema: LogPacksSchema, run: (input, actor) => logInSession(actor, input) });

export const correctLogAction = guardedAction({ may: 'session.change', schema: CorrectLogSchema, run: (input, actor) => correctSession(actor, input) });

export const closeSessionAction = guardedAction({ may: 'session.log', schema: CloseSessionSchema, run: (input, actor) => endSession(actor, input) });

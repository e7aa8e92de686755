'use server';

import { ChangeActionSchema, DoneActionSchema, DropActionSchema, OpenActionSchema } from '@/lib/assessments/action-input';
import { changeAction, closeAction, reopenAction } from '@/lib/server/actions/write-actions';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const changeActionAction = guardedAction({ may: 'action.change', schema: ChangeActionSchema, run: (input, actor) => changeAction(actor, input) });
export const doneAction = guardedAction({ may: 'action.close', schema: DoneActionSchema, run: (input, actor) => closeAction(actor, 'done', input) });
export const dropAction = guardedAction({ may: 'action.close', schema: DropActionSchema, run: (input, actor) => closeAction(actor, 'dropped', input) });
export const reopenActionAction = guardedAction({ may: 'action.close', schema: OpenActionSchema, run: (input, actor) => reopenAction(actor, input) });

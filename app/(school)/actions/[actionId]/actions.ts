'use server';

import { ChangeActionSchema, DoneActionSchema, DropActionSchema, OpenActionSchema } from '@/lib/assessments/action-input';
import { changeAction, closeAction, reopenAction } from '@/lib/server/actions/write-actions';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const changeActionAction = guardedAction({ may: 'action.change', schema: ChangeActionSchema, run: (input, actor) => changeAction(input, actor) });
export const doneAction = guardedAction({ may: 'action.close', schema: DoneActionSchema, run: (input, actor) => closeAction('done', input, actor) });
export const dropAction = guardedAction({ may: 'action.close', schema: DropActionSchema, run: (input, actor) => closeAction('dropped', input, actor) });
export const reopenActionAction = guardedAction({ may: 'action.close', schema: OpenActionSchema, run: (input, actor) => reopenAction(input, actor) });

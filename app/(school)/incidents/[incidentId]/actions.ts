'use server';

import { AddPhotosSchema, CloseSchema, CorrectionSchema, CorrectiveActionSchema, FollowUpSchema, RemovePhotoSchema, ReopenSchema, RiskSchema } from '@/lib/incidents/change-input';
import { WrongPackSchema } from '@/lib/incidents/wrong-pack';
import { SayWhereSchema } from '@/lib/packs/states/say-where';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { addCorrectiveAction, addFollowUp, addPhotos, chooseRisk, closeIncident, correct, placeIncidentPack, removePhoto, reopenIncident, rightPack } from '@/lib/server/incidents/change-incident';

export const correctAction = guardedAction({ may: 'incident.correct', schema: CorrectionSchema, run: (raw, actor) => correct(actor, raw) });

export const addPhotosAction = guardedAction({ may: 'incident.correct', schema: AddPhotosSchema, run: (raw, actor) => addPhotos(actor, raw) });

export const removePhotoAction = guardedAction({ may: 'incident.close', schema: RemovePhotoSchema, run: (input, actor) => removePhoto(actor, input) });

export const placePackAction = guardedAction({ may: 'pack.say-where', schema: SayWhereSchema, run: (command, actor) => placeIncidentPack(actor, command) });

export const wrongPackAction = guardedAction({ may: 'incident.close', schema: WrongPackSchema, run: (input, actor) => rightPack(actor, input) });

export const followUpAction = guardedAction({ may: 'incident.follow-up', schema: FollowUpSchema, run: (input, actor) => addFollowUp(actor, input) });

export const chooseRiskAction = guardedAction({ may: 'incident.follow-up', schema: RiskSchema, run: (input, actor) => chooseRisk(actor, input) });

export const correctiveActionAction = guardedAction({ may: 'incident.follow-up', schema: CorrectiveActionSchema, run: (input, actor) => addCorrectiveAction(actor, input) });

export const closeAction = guardedAction({ may: 'incident.close', schema: CloseSchema, run: (input, actor) => closeIncident(actor, input) });

export const reopenAction = guardedAction({ may: 'incident.close', schema: ReopenSchema, run: (input, actor) => reopenIncident(actor, input) });

'use server';

import { SignIncidentSchema } from '@/lib/incidents/sign-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { signIncident } from '@/lib/server/incidents/sign-incident';

export const signIncidentAction = guardedAction({ may: 'incident.sign', schema: SignIncidentSchema, run: (input, actor) => signIncident(actor, input) });

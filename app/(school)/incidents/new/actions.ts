'use server';

import { z } from 'zod';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { dropDraft, saveForm } from '@/lib/server/incidents/record-incident';

/** The form is read by the use case: what is kept as a draft need not be whole. */
export const saveIncidentAction = guardedAction({ may: 'incident.record', schema: z.record(z.string(), z.unknown()), run: (raw, actor) => saveForm(actor, raw) });

export const dropDraftAction = guardedAction({ may: 'incident.record', schema: z.object({}), run: (_, actor) => dropDraft(actor) });

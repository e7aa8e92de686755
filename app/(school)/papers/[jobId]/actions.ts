'use server';

import { z } from 'zod';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { refused } from '@/lib/server/forms/outcome';
import { cancelPaper } from '@/lib/server/papers/begin-paper';

const CancelSchema = z.object({ jobId: z.uuid({ error: 'There is no such paper' }) });

/** Gives up a paper that this person asked for. */
export const cancelPaperAction = guardedAction({
  may: null,
  schema: CancelSchema,
  run: ({ jobId }, actor) => Promise.resolve(cancelPaper(actor, jobId) ? { ok: true, then: `/papers/${jobId}` } : refused(null, 'It is too late: the paper is being kept, or it has ended')),
});

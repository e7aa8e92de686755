import { z } from 'zod';
import { line } from '@/lib/forms/fields';

/** The officer's signature under the paper of an incident; `seen` is the fingerprint of what was read. */
export const SignIncidentSchema = z.object({
  incidentId: line('The form has lost its incident'),
  seen: line('The form has lost what you read'),
  read: z.literal('yes', { error: 'Say that you have read the paper you sign' }),
  password: z.string({ error: 'Enter your password, because you sign with it' }).min(1, 'Enter your password, because you sign with it'),
});
export type SignIncidentInput = z.output<typeof SignIncidentSchema>;

import { z } from 'zod';
import { line } from '@/lib/forms/fields';

const NO_EVENT = 'No event was named';
/** Long enough to be understood, short enough for the file's pages. */
const REASON = 300;
const password = z.string({ error: 'Enter your password, because you sign with it' }).min(1, 'Enter your password, because you sign with it');

export const HandOverEventSchema = z.object({
  eventId: line(NO_EVENT),
  officerId: line('Choose the safety officer who is to check it'),
  /** of the file that was shown: what is signed is what was read */
  seen: line('Read the file first'),
  password,
});
export type HandOverEventInput = z.output<typeof HandOverEventSchema>;

export const SignEventSchema = z.object({
  eventId: line(NO_EVENT),
  documentId: line('No file was named'),
  read: z.literal('yes', { error: 'Say that you have read the file you sign' }),
  password,
});
export type SignEventInput = z.output<typeof SignEventSchema>;

export const ReturnEventSchema = z.object({ eventId: line(NO_EVENT), reason: line('Write what is to be changed', 1000) });
export const AcceptLineSchema = z.object({ eventId: line(NO_EVENT), lineId: line('No line of the check was named'), words: line('No line of the check was named', 2000), reason: line('Write why it can stand', REASON) });
export const WithdrawEventSchema = z.object({ eventId: line(NO_EVENT), reason: line('Write why, so that whoever holds the file understands it', REASON) });
export const CancelEventSchema = z.object({ eventId: line(NO_EVENT), reason: line('Write why it is called off', REASON) });

/** One of the papers that nobody signs. */
export const MakePaperSchema = z.object({ eventId: line(NO_EVENT), kind: z.enum(['response-card', 'pack-list', 'briefing'], { error: 'Choose a paper' }) });

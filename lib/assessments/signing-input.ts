import { z } from 'zod';
import { line, optionalLine } from '@/lib/forms/fields';

const NO_VERSION = 'No assessment was named';
/** A reason long enough to be understood, short enough for the first page. */
const REASON = 300;
const day = (missing: string) => line(missing, 10).pipe(z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'Choose a day'));

export const HandOverSchema = z.object({
  versionId: line(NO_VERSION),
  officerId: line('Choose the safety officer who is to check it'),
  reviewBy: day('Choose the day until which it is to hold'),
  /** of the paper that was shown: what is signed is what was read */
  seen: line('Read the paper first'),
  password: z.string({ error: 'Enter your password, because you sign with it' }).min(1, 'Enter your password, because you sign with it'),
});
export type HandOverInput = z.output<typeof HandOverSchema>;

export const SignOffSchema = z.object({
  versionId: line(NO_VERSION),
  documentId: line('No paper was named'),
  read: z.literal('yes', { error: 'Say that you have read the paper you sign' }),
  password: z.string({ error: 'Enter your password, because you sign with it' }).min(1, 'Enter your password, because you sign with it'),
});
export type SignOffInput = z.output<typeof SignOffSchema>;

export const ReturnSchema = z.object({ versionId: line(NO_VERSION), comment: line('Write what is to be changed', 2000) });
export type ReturnInput = z.output<typeof ReturnSchema>;

export const AcceptStopSchema = z.object({
  versionId: line(NO_VERSION),
  stopId: line('No stop condition was named'),
  reason: line('Write why it can be accepted', REASON),
  replacement: optionalLine(REASON).transform((words) => words ?? ''),
  endsOn: day('Choose the last day on which it holds'),
  paper: optionalLine(160).transform((words) => words ?? ''),
});
export type AcceptStopInput = z.output<typeof AcceptStopSchema>;

export const SettleReviewSchema = z.object({ versionId: line(NO_VERSION), requestId: line('No request was named'), how: line('Write what you looked at, and what came of it', 1000) });
export type SettleReviewInput = z.output<typeof SettleReviewSchema>;

export const SuspendSchema = z.object({ versionId: line(NO_VERSION), reason: line('Write why, so that everybody understands it', 500) });
export type SuspendInput = z.output<typeof SuspendSchema>;

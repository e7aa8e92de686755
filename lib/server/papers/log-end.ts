import 'server-only';
import { verifyLog } from '@/lib/db/audit/verify-log';
import type { Actor } from '../actor';
import { database } from '../database';

/** Where a school's log ended when a paper was made: a log that is rewritten later no longer fits to it. */
export interface LogEnd { readonly number: number; readonly hash: string }

/** Where the log ends now, which stands on the paper. @throws when the log does not fit together: then nothing more is signed on top of it */
export async function endOfLog(actor: Actor): Promise<LogEnd> {
  const log = await verifyLog(database(), actor.schoolId);
  if (!log.ok) throw new Error(`the log of the school is ${log.fault} at entry ${log.sequence}`);
  return { number: log.end.sequence, hash: log.end.hash };
}

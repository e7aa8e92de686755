import 'server-only';
import { randomBytes } from 'node:crypto';
import type { Fault } from '@/lib/forms/form-state';

/** Prisma's codes for a transaction that met another one: SQLite's lock, and PostgreSQL's serialisation. */
const MET_ANOTHER = new Set(['P1008', 'P2028', 'P2034']);

/**
 * Returns what is said to the person when something went wrong that nobody foresaw. This is the one place where such
 * an error is written to the log; the reference stands in both.
 */
export function faultOfError(error: unknown): Fault {
  const reference = randomBytes(4).toString('hex');
  console.error(`Unexpected, reference ${reference}:`, error);
  if (MET_ANOTHER.has(codeOf(error))) return { field: null, message: `Somebody else was saving at the same moment, so nothing of this was saved. Send it again (reference ${reference})` };
  return { field: null, message: `Something went wrong on our side, and nothing of this was saved. Try again; if it stays so, tell whoever runs this program the reference ${reference}` };
}

function codeOf(error: unknown): string {
  return typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string' ? error.code : '';
}

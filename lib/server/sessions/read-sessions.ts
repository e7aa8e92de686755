import 'server-only';
import { packsToLog } from '@/lib/db/sessions/packs-to-log';
import { findSession, listSessions } from '@/lib/db/sessions/read-sessions';
import { listSites } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import { writeCsv } from '@/lib/csv/write-csv';
import type { PackToLog } from '@/lib/sessions/log-packs';
import type { Session } from '@/lib/sessions/session';
import { narrowedSessions, SESSION_COLUMNS, type SessionQuery } from '@/lib/sessions/session-list';
import type { Actor } from '../actor';
import { database } from '../database';
import { packLimitsOf } from '../packs/pack-limits';

export interface SessionList {
  readonly shown: readonly Session[];
  /** how many there are in all, to tell an empty log from a search that found nothing */
  readonly all: number;
}

/** The sessions of the actor's school that a search leaves, the latest first. */
export async function listOfSessions(actor: Actor, query: SessionQuery): Promise<SessionList> {
  const all = await listSessions(database(), schoolScope(actor));
  return { shown: narrowedSessions(all, query), all: all.length };
}

/** The same list as a table for a spreadsheet. */
export async function sessionsCsv(actor: Actor, query: SessionQuery): Promise<string> {
  return writeCsv(SESSION_COLUMNS, (await listOfSessions(actor, query)).shown);
}

export interface SessionInFull { readonly session: Session; readonly register: readonly PackToLog[] }

/** A session of the actor's school with the packs that can be logged in it, or null. */
export async function sessionInFull(actor: Actor, sessionId: string): Promise<SessionInFull | null> {
  const scope = schoolScope(actor);
  const [session, register] = await Promise.all([findSession(database(), scope, sessionId), packsToLog(database(), scope, await packLimitsOf(actor), new Date())]);
  return session === null ? null : { session, register };
}

/** Places where a session can be, and where one is open already. */
export async function placesForSession(actor: Actor): Promise<readonly { readonly id: string; readonly name: string; readonly openId: string | null }[]> {
  const scope = schoolScope(actor);
  const [sites, sessions] = await Promise.all([listSites(database(), scope), listSessions(database(), scope, RECENT)]);
  return sites.map(({ id, name }) => ({ id, name, openId: sessions.find((session) => session.siteId === id && session.endedAt === null)?.id ?? null }));
}

/** Enough to hold every session that is still open. */
const RECENT = 60;

import { randomUUID } from 'node:crypto';
import type { Fault } from '@/lib/forms/form-state';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { closeSession, type CloseSessionInput } from '@/lib/sessions/close-session';
import { type Decided, refusedFor } from '@/lib/sessions/decided';
import { correctLog, type CorrectLogInput, type Counts, logPacks, type LogPacksInput } from '@/lib/sessions/log-packs';
import { openSession, type OpenSessionInput } from '@/lib/sessions/open-session';
import type { Session } from '@/lib/sessions/session';
import { can } from '@/lib/access/can';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { MetAnother } from '../why-to-try-again';
import { packsToLog } from './packs-to-log';
import { findSession } from './read-sessions';

export type SessionWritten = { readonly ok: true; readonly id: string } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Keeps an opening check; where it is good in every point, the session is open. */
export async function writeOpening(db: Db, by: Member, now: Date, input: OpenSessionInput, startedAt: Date): Promise<SessionWritten> {
  const [scope, id] = [schoolScope(by), randomUUID()];
  return recordChange<SessionWritten>(db, by, now, async (tx) => {
    const site = await tx.site.findFirst({ where: { ...scope, id: input.siteId, archivedAt: null }, select: { id: true } });
    if (site === null) return { value: refusedFor('siteId', 'Choose one of your places'), events: [] };
    const openThere = (await tx.session.count({ where: { ...scope, siteId: site.id, endedAt: null } })) > 0;
    const decided = openSession({ id, input, startedAt, now, openThere });
    if (!decided.ok) return { value: decided, events: [] };
    const { opening, ...times } = decided.change;
    await tx.session.create({ data: { ...scope, id, siteId: site.id, ...times, peoplePresent: input.peoplePresent, note: input.note, openingJson: JSON.stringify(opening), byId: by.personId, byName: by.name } });
    return { value: { ok: true, id }, events: decided.events };
  });
}

/** Adds one charge, or one crash, to each pack named. */
export async function writeLog(db: Db, by: Member, at: Date, limits: SchoolPackLimits, input: LogPacksInput): Promise<SessionWritten> {
  return change(db, by, at, input.sessionId, async (session, tx, scope) => logPacks(session, input, await packsToLog(tx, scope, limits, at)), writeCounts);
}

/** Says the counts of one pack anew; who opened the session, an organiser or the officer may. */
export async function writeCorrection(db: Db, by: Member, at: Date, limits: SchoolPackLimits, input: CorrectLogInput): Promise<SessionWritten> {
  return change(db, by, at, input.sessionId, async (session, tx, scope) => {
    if (!can(by.role, 'session.change', { actor: by, on: { schoolId: scope.schoolId, byId: session.byId } })) return refusedFor(null, 'Only who opened the session, an organiser or the safety officer puts a count right');
    const decided = correctLog(session, input, await packsToLog(tx, scope, limits, at));
    return decided.ok ? { ...decided, change: [decided.change] } : decided;
  }, writeCounts);
}

/** Keeps a closing check, which ends the session. */
export async function writeClosing(db: Db, by: Member, at: Date, input: CloseSessionInput): Promise<SessionWritten> {
  return change(db, by, at, input.sessionId, (session) => Promise.resolve(closeSession(session, input, at)), async (tx, scope, session, { closing, ...columns }) => {
    await tx.session.updateMany({ where: { ...scope, id: session.id }, data: { ...columns, closingJson: JSON.stringify(closing) } });
  });
}

async function writeCounts(tx: Tx, scope: SchoolScope, session: Session, counts: readonly Counts[]): Promise<void> {
  for (const { packId, charges, crashes } of counts) {
    const key = { sessionId: session.id, packId };
    await tx.sessionPack.upsert({ where: { sessionId_packId: key }, create: { ...scope, ...key, charges, crashes }, update: { charges, crashes } });
  }
}

/** Decides about what stands there now and writes it with its events; done again when somebody else wrote in between. */
async function change<Change>(db: Db, by: Member, at: Date, sessionId: string, decide: (session: Session, tx: Tx, scope: SchoolScope) => Promise<Decided<Change>>, write: (tx: Tx, scope: SchoolScope, session: Session, change: Change) => Promise<void>): Promise<SessionWritten> {
  const scope = schoolScope(by);
  return recordChange<SessionWritten>(db, by, at, async (tx) => {
    const session = await findSession(tx, scope, sessionId);
    if (session === null) return { value: refusedFor(null, 'Your school has no such session'), events: [] };
    const decided = await decide(session, tx, scope);
    if (!decided.ok) return { value: decided, events: [] };
    await write(tx, scope, session, decided.change);
    const { count } = await tx.session.updateMany({ where: { ...scope, id: sessionId, revision: session.revision }, data: { revision: { increment: 1 } } });
    if (count !== 1) throw new MetAnother('The session was changed at the same moment');
    return { value: { ok: true, id: sessionId }, events: decided.events };
  });
}

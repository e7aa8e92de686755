import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { listVersions } from '@/lib/db/assessments/list-assessments';
import { listActions } from '@/lib/db/assessments/actions';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { openDatabase, type Db } from '@/lib/db/client';
import { listIncidents } from '@/lib/db/incidents/read-incidents';
import { migrate } from '@/lib/db/migrate/migrate';
import { listPacks } from '@/lib/db/packs/read-packs';
import { listSites } from '@/lib/db/places/read-sites';
import { listSessions } from '@/lib/db/sessions/read-sessions';
import { schoolScope, type SchoolScope } from '@/lib/db/scope';
import { allAuthorities } from '@/lib/db/signing/certificates';
import { isOverdue } from '@/lib/assessments/actions';
import { checkFile } from '@/lib/pdf/verify/check-file';
import { openingShortfalls, stateOfSession } from '@/lib/sessions/session';
import { demoEnvironment, demoPassword, demoSignIns } from '@/scripts/start/demo.mjs';
import { DEMO_PEOPLE } from '@/scripts/start/demo-people.mjs';

const TODAY = '2026-11-25';
const SECRET = 'secret-of-a-test-that-is-long-enough-for-all';

/** The demo as `npm start -- --demo` makes it: in a process of its own. */
describe('the demo school', () => {
  let db: Db;
  let scope: SchoolScope;

  beforeAll(async () => {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-test-'));
    const url = `file:${path.join(folder, 'demo.db')}`;
    const migrated = await migrate(url, process.cwd());
    expect(migrated.ok).toBe(true);
    const env = { ...process.env, ...demoEnvironment({ root: process.cwd(), url, secret: SECRET, address: 'http://localhost:3000' }), DEMO_TODAY: TODAY };
    const child = spawn(process.execPath, ['--import', 'tsx', 'scripts/load-demo.ts'], { env, stdio: ['ignore', 'ignore', 'pipe'] });
    let said = '';
    child.stderr.on('data', (data: Buffer) => { said += data.toString(); });
    await once(child, 'close');
    expect(said).toBe('');
    expect(child.exitCode).toBe(0);
    db = openDatabase(url);
    const school = await db.school.findFirstOrThrow();
    expect(school.demo).toBe(true);
    scope = schoolScope({ schoolId: school.id });
    return async () => {
      await db.$disconnect();
      rmSync(folder, { recursive: true, force: true });
    };
  }, 480_000);

  it('has a log that fits together, in the order of time', async () => {
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true });
    const entries = await db.auditEntry.findMany({ orderBy: { sequence: 'asc' }, select: { at: true } });
    expect(entries.length).toBeGreaterThan(400);
    expect(entries.filter((entry) => entry.at.getTime() >= new Date(`${TODAY}T00:00:00Z`).getTime())).toEqual([]);
  });

  it('has a paper that two people really signed, and a next version that came back', async () => {
    const versions = await listVersions(db, scope);
    expect(versions.map(({ number, state }) => [number, state])).toEqual([[2, 'returned'], [1, 'signed']]);
    const file = await db.documentRevision.findFirstOrThrow({ where: { document: { versionId: versions[1]?.id, state: 'signed' } }, orderBy: { number: 'desc' } });
    const checked = checkFile(new Uint8Array(file.bytes), { authorities: (await allAuthorities(db)).map(({ certificate }) => certificate) });
    expect(checked).toMatchObject({ state: 'unchanged', unsignedRoles: [] });
    expect(checked.state === 'unchanged' ? checked.signatures.map(({ holder }) => holder) : []).toEqual(['Tom Ashby', 'Ines Holloway']);
    expect(await db.comment.count({ where: { versionId: versions[0]?.id } })).toBe(1);
  });

  it('has something in every list', async () => {
    const [sites, packs, sessions, incidents, actions] = await Promise.all([listSites(db, scope), listPacks(db, scope), listSessions(db, scope), listIncidents(db, scope, null), listActions(db, scope)]);
    expect(sites.find(({ kind }) => kind === 'own')?.areas.map(({ use }) => use).sort()).toEqual(['arena', 'charging', 'disposal', 'isolation', 'storage']);
    expect(packs).toHaveLength(30);
    expect(sessions.length).toBeGreaterThanOrEqual(27);
    expect(incidents.map(({ state }) => state)).toEqual(['recorded', 'closed', 'closed']);
    expect(actions.filter((action) => isOverdue(action, TODAY))).toHaveLength(1);
    expect(await db.membership.count()).toBe(DEMO_PEOPLE.length);
  });

  it('teaches nothing unsafe: a dented or swollen pack is never charged again and lies outdoors within minutes', async () => {
    const changes = await db.packStateChange.findMany({ where: { toState: 'isolated', NOT: { fromState: 'isolated' } }, include: { pack: { include: { sessionPacks: { include: { session: true } } } } } });
    expect(changes.map(({ pack }) => pack.label).sort()).toEqual(['W-05', 'W-07', 'W-11', 'W-19']);
    for (const { pack, packId, at } of changes) {
      expect(pack.sessionPacks.filter(({ session }) => session.startedAt > at)).toEqual([]);
      const placed = await db.packStateChange.findFirstOrThrow({ where: { packId, placeNow: { not: null } }, orderBy: { at: 'asc' } });
      expect(['outdoor-spot', 'fire-service']).toContain(placed.placeNow);
      expect(placed.at.getTime() - at.getTime()).toBeLessThanOrEqual(15 * 60_000);
    }
    const checks = await db.packCheck.findMany({ where: { measuresJson: { contains: '"dented":true' } } });
    expect(checks.map(({ verdict }) => verdict)).toEqual(['isolate', 'isolate']);
  });

  it('holds no session while a paper is to be looked at again, or where the opening check is not good', async () => {
    const requests = await db.reviewRequest.findMany();
    const sessions = await listSessions(db, scope);
    expect(requests).toHaveLength(2);
    for (const { at, settledAt } of requests) expect(sessions.filter(({ startedAt }) => startedAt > at && (settledAt === null || startedAt < settledAt))).toEqual([]);
    const stopped = sessions.filter((session) => stateOfSession(session) === 'stopped');
    expect(stopped.map(openingShortfalls)).toEqual([['the smoke detection is off, or something is put over it']]);
    expect(stopped.flatMap(({ packs }) => packs)).toEqual([]);
  });

  it('names a password that differs with the installation, and prints it for everybody', () => {
    expect(demoPassword(SECRET)).toMatch(/^sand(-[a-z2-9]{4}){3}$/);
    expect(demoPassword(SECRET)).not.toBe(demoPassword(`${SECRET}!`));
    for (const { email } of DEMO_PEOPLE) expect(demoSignIns(SECRET)).toContain(email);
    expect(demoSignIns(SECRET)).toContain(demoPassword(SECRET));
  });
});

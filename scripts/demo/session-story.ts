import { schoolScope } from '@/lib/db/scope';
import { packsToLog } from '@/lib/db/sessions/packs-to-log';
import { findSession } from '@/lib/db/sessions/read-sessions';
import { writeClosing, writeLog, writeOpening } from '@/lib/db/sessions/write-session';
import type { Member } from '@/lib/db/people/find-member';
import { later } from './calendar';
import { check, historyOf, idOf, putBack } from './packs';
import { isolateDented } from './register-story';
import { done, LIMITS, type Entry, type World } from './world';

const MON_WED_FRI = [1, 3, 5];
const FIRST_DAY = -78;
/** Nobody flew after it: the store check of yesterday found a swollen pack. */
const LAST_DAY = -2;
/** Half-term, and the days after a pack got hot until the officer had looked at the paper again. */
const NONE: readonly (readonly [number, number])[] = [[-36, -32], [-21, -17]];

/** Days with a session, counted back from today. */
export function sessionDays({ calendar }: World): readonly number[] {
  const days = Array.from({ length: LAST_DAY - FIRST_DAY + 1 }, (_, index) => FIRST_DAY + index);
  return days.filter((day) => MON_WED_FRI.includes(calendar.weekday(day)) && !NONE.some(([from, to]) => day >= from && day <= to));
}

/** Packs that were dented in a crash, by how many sessions before the last. */
const DENTS: Readonly<Record<number, string>> = { 15: 'W-11', 2: 'W-05' };
/** The session that did not begin, because the hall's detection had caps on for a play. */
const COVERED = 9;

/** The sessions of the season. */
export function sessionStory(world: World): readonly Entry[] {
  const days = sessionDays(world);
  return days.map((day, index): Entry => {
    const last = days.length - 1 - index;
    const at = world.calendar.at(day, '15:10');
    if (last === COVERED) return { at, what: 'a session that does not begin', run: (start) => notBegun(world, start) };
    return { at, what: 'a session', run: (start) => hold(world, start, index, DENTS[last] ?? null) };
  });
}

const GOOD_OPENING = { 'detectors': 'yes', 'way-out': 'yes', 'first-aider': 'yes', 'adult': 'yes', 'outdoor-spot': 'yes' } as const;

async function notBegun({ db, people, places }: World, at: Date): Promise<void> {
  done('a session that does not begin', await writeOpening(db, people.organiser, at, { ...GOOD_OPENING, detectors: 'no', siteId: places.siteId, startedAt: null, peoplePresent: null, note: 'Covered for the school play. The caretaker takes the covers off tonight.' }, at));
}

/** One training: packs that were hit last time looked at first, then the opening check, charges, crashes, the closing check. */
async function hold(world: World, at: Date, index: number, dented: string | null): Promise<void> {
  const { db, people, places } = world;
  const by = index % 3 === 0 ? people.organiser : people.helper;
  await backInUse(world, at);
  const began = later(at, 20);
  const { id } = done('opening a session', await writeOpening(db, by, began, { ...GOOD_OPENING, siteId: places.siteId, startedAt: null, peoplePresent: 10 + (index % 3), note: null }, began));
  const ready = await readyLabels(world);
  const pick = (count: number, from: number): readonly string[] => Array.from({ length: Math.min(count, ready.length) }, (_, step) => ready[(from + step) % ready.length] ?? '').filter((label) => label !== '');
  const first = pick(11 + (index % 3), index * 7);
  const second = pick(8, index * 7 + 3);
  await log(world, by, later(began, 10), id, 'charge', dented === null ? first : [...new Set([...first, dented])]);
  await log(world, by, later(began, 45), id, 'charge', second);
  const crashed = [...new Set([...(dented === null ? [] : [dented]), ...second.slice(0, 1 + (index % 2))])];
  await log(world, by, later(began, 70), id, 'crash', crashed);
  for (const [step, label] of crashed.entries()) {
    const looked = later(began, 75 + 6 * step);
    await (label === dented ? isolateDented(world, looked, label) : check(world, people.helper, looked, label, { hit: 'hours', hoursSinceImpact: '0.5', hoursSinceUse: '0.6', hoursSinceCharge: '1' }));
  }
  await close(world, by, later(began, 100), id, index);
}

/** Packs on watch for a hit are looked at before the next charge, and go back in use when there is no sign. */
async function backInUse(world: World, at: Date): Promise<void> {
  const rows = await world.db.pack.findMany({ where: { schoolId: world.people.helper.schoolId, state: 'watch' }, select: { label: true }, orderBy: { labelKey: 'asc' } });
  for (const [step, { label }] of rows.entries()) {
    const last = (await historyOf(world, label)).checks[0];
    if (last === undefined || !last.result.fired.every(({ measure }) => measure === 'hoursSinceImpact' || measure === 'hoursSinceUse')) continue;
    await check(world, world.people.helper, later(at, 3 * step), label, { hit: 'hours', hoursSinceImpact: '46' });
    await putBack(world, world.people.organiser, later(at, 3 * step + 1), label);
  }
}

async function readyLabels({ db, people }: World): Promise<readonly string[]> {
  const scope = schoolScope(people.helper);
  const packs = await packsToLog(db, scope, LIMITS, new Date());
  const inUse = new Set((await db.pack.findMany({ where: { ...scope, state: 'in-use' }, select: { id: true } })).map(({ id }) => id));
  return packs.filter(({ id, notToCharge }) => notToCharge === null && inUse.has(id)).map(({ label }) => label);
}

async function log(world: World, by: Member, at: Date, sessionId: string, what: 'charge' | 'crash', labels: readonly string[]): Promise<void> {
  const { revision } = await sessionOf(world, sessionId);
  done(`logging a ${what}`, await writeLog(world.db, by, at, LIMITS, { sessionId, revision, what, packs: labels.map((label) => idOf(world, label)) }));
}

async function close(world: World, by: Member, at: Date, sessionId: string, index: number): Promise<void> {
  const { revision } = await sessionOf(world, sessionId);
  const left = index % 10 === 6;
  const answers = { 'storage-charge': left ? 'no' : 'yes', 'chargers-off': 'yes', 'put-away': 'yes', 'counted': 'yes' } as const;
  done('closing a session', await writeClosing(world.db, by, at, { sessionId, revision, ...answers, peoplePresent: null, note: left ? 'Two packs were still above storage charge; Tom Ashby stayed until they were down.' : null }));
}

async function sessionOf({ db, people }: World, id: string) {
  const session = await findSession(db, schoolScope(people.helper), id);
  if (session === null) throw new Error(`the demo has no session ${id}`);
  return session;
}

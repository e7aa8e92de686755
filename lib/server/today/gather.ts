import 'server-only';
import { can, mayEver } from '@/lib/access/can';
import type { ActionRecord } from '@/lib/assessments/actions';
import type { Covered } from '@/lib/assessments/covers';
import { listActions } from '@/lib/db/assessments/actions';
import { listIncidents } from '@/lib/db/incidents/read-incidents';
import { listPacks } from '@/lib/db/packs/read-packs';
import { listMembers } from '@/lib/db/people/members';
import { listSites } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import { listSessions } from '@/lib/db/sessions/read-sessions';
import { type NextEvent, nextEvents, type OpenPaper, openPapers } from '@/lib/db/today/read-today';
import { incidentTitle } from '@/lib/incidents/incident-list';
import { foundIn, lastOfEachPlace } from '@/lib/sessions/session-list';
import { type Session, stateOfSession } from '@/lib/sessions/session';
import type { ListedPack } from '@/lib/packs/pack-list';
import type { Site } from '@/lib/places/place';
import type { ActionFact, EventFact, IncidentFact, SessionFact, TodayFacts } from '@/lib/today/facts';
import { type Today, todayOf } from '@/lib/today/today';
import { HOUR_MS } from '@/lib/units/time';
import { calendarDay, calendarDayWords, dayWords, momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { type CurrentSchool, currentSchool } from '../people/current-school';
import { energyOf } from '../assessments/register';
import { packLimitsOf } from '../packs/pack-limits';
import { daysBetween } from './days';
import { packFacts } from './pack-facts';
import { type PaperNow, paperNow } from './paper-facts';

export interface TodayView {
  readonly today: Today;
  readonly school: CurrentSchool;
  /** the day in words */
  readonly day: string;
  /** signed papers with what they cover */
  readonly papers: readonly PaperNow[];
  readonly last: Session | null;
  readonly openSessions: readonly Session[];
  readonly events: readonly { readonly id: string; readonly title: string; readonly when: string; readonly place: string; readonly packs: number }[];
}

const EVENTS_SHOWN = 3;

/** All that Today shows to one person, gathered once. */
export async function gatherToday(actor: Actor, now: Date): Promise<TodayView> {
  const [db, scope] = [database(), schoolScope(actor)];
  const [school, papers, packs, sessions, incidents, actions, sites, members, events] = await Promise.all([
    currentSchool(actor), openPapers(db, scope), listPacks(db, scope), listSessions(db, scope), mayEver(actor.role, 'incident.close') ? listIncidents(db, scope, null) : [], listActions(db, scope), listSites(db, scope), listMembers(db, scope), nextEvents(db, scope, now),
  ]);
  const today = calendarDay(now, school.timeZone);
  const nowOf = (paper: OpenPaper): Partial<Covered> => coveredNow(paper, packs, sessions, sites);
  const officerName = (personId: string): string | null => members.find((member) => member.personId === personId)?.name ?? null;
  const shown = await Promise.all(papers.map((paper) => paperNow(paper, { actor, today, style: school, officerName, nowOf })));
  const facts: TodayFacts = {
    role: actor.role, papers: shown.map(({ fact }) => fact), packs: packFacts(packs, await packLimitsOf(actor), now),
    sessions: lastOfEachPlace(sessions).map((session) => sessionFact(session, school, now)),
    incidents: incidents.flatMap(({ id, number, facts: { kinds }, state, recordedAt }): readonly IncidentFact[] => (state === 'closed' ? [] : [{ id, state, name: `incident ${number}: ${lowerFirst(incidentTitle({ kinds }))}`, daysOpen: daysBetween(calendarDay(recordedAt, school.timeZone), today) }])),
    actions: actions.filter(({ state }) => state === 'open').map((action) => actionFact(action, actor, school, today)),
    events: events.flatMap((event) => eventFact(event, actor, school, today)),
    setUp: { people: members.filter(({ isActive }) => isActive).length, sites: sites.length, packs: packs.length, papers: papers.length },
  };
  return {
    today: todayOf(facts), school, day: dayWords(now, school), papers: can(actor.role, 'assessment.read') ? shown.filter(({ fact }) => fact.standing !== null) : [], last: sessions[0] ?? null,
    openSessions: sessions.filter((session) => stateOfSession(session) === 'open'),
    events: events.slice(0, EVENTS_SHOWN).map(({ id, title, startsAt, site, _count }) => ({ id, title, when: dayWords(startsAt, school), place: site.name, packs: _count.packs })),
  };
}

/** What register and log say of the things a paper covers. What nobody has counted is left out. */
function coveredNow(paper: OpenPaper, packs: readonly ListedPack[], sessions: readonly Session[], sites: readonly Site[]): Partial<Covered> {
  const { siteId } = paper.assessment;
  const serving = packs.filter(({ pack }) => pack.state === 'in-use' || pack.state === 'watch');
  const stores = sites.find(({ id }) => id === siteId)?.areas.filter(({ use }) => use === 'storage').map(({ id }) => id) ?? [];
  const stored = serving.filter(({ pack }) => pack.areaId === null || stores.includes(pack.areaId)).map(({ pack }) => energyOf(pack));
  const held = sessions.filter((session) => session.siteId === siteId && stateOfSession(session) !== 'stopped' && (paper.signedAt === null || session.startedAt >= paper.signedAt));
  const people = held.find(({ peoplePresent }) => peoplePresent !== null)?.peoplePresent;
  return {
    packs: serving.length, sessions: held.length,
    ...(stored.some((energy) => energy === null) ? {} : { storedWh: stored.reduce((sum: number, energy) => sum + (energy ?? 0), 0) }),
    ...(people === undefined || people === null ? {} : { people }),
  };
}

function sessionFact(session: Session, school: CurrentSchool, now: Date): SessionFact {
  const { id, siteName, startedAt } = session;
  return { id, place: siteName, state: stateOfSession(session), began: momentWords(startedAt, school), hoursAgo: (now.getTime() - startedAt.getTime()) / HOUR_MS, found: foundIn(session) };
}

function actionFact({ id, title, ownerName, ownerId, dueOn, stopId }: ActionRecord, actor: Actor, school: CurrentSchool, today: string): ActionFact {
  return { id, title, owner: ownerName, isMine: ownerId === actor.personId, due: calendarDayWords(dueOn, school), daysLeft: daysBetween(today, dueOn), ofStop: stopId !== null };
}

/** One that the reader may still have to do with; others are not said to be anything. */
function eventFact({ id, title, state, startsAt, preparedById, preparedByName, officerId, documents }: NextEvent, actor: Actor, school: CurrentSchool, today: string): readonly EventFact[] {
  if (state !== 'draft' && state !== 'with-officer' && state !== 'returned' && state !== 'signed') return [];
  return [{ id, title, state, preparer: preparedByName, isMine: preparedById === actor.personId, isForMe: officerId === actor.personId, preparerSigned: documents.length > 0, daysLeft: daysBetween(today, calendarDay(startsAt, school.timeZone)) }];
}

const lowerFirst = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

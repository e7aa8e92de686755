import 'server-only';
import { listIncidents } from '@/lib/db/incidents/read-incidents';
import { schoolScope } from '@/lib/db/scope';
import { listSessions } from '@/lib/db/sessions/read-sessions';
import { type Trend, trendOf } from '@/lib/sessions/trend';
import type { Actor } from '../actor';
import { database } from '../database';
import { type CurrentSchool, currentSchool } from '../people/current-school';

export interface SchoolTrend { readonly trend: Trend; readonly school: CurrentSchool }

/** Incidents per charge in the log of the actor's school. Who only nearly came to harm is told beside. */
export async function trendOfSchool(actor: Actor, now: Date): Promise<SchoolTrend> {
  const scope = schoolScope(actor);
  const [sessions, incidents, school] = await Promise.all([listSessions(database(), scope), listIncidents(database(), scope, null), currentSchool(actor)]);
  const counted = incidents.map(({ facts: { when, kinds } }) => ({ at: new Date(when.at), onlyNearMiss: kinds.every((kind) => kind === 'near-miss') }));
  return { trend: trendOf(sessions, counted, now), school };
}

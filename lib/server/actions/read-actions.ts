import 'server-only';
import { can } from '@/lib/access/can';
import { type ActionRecord, isOverdue, narrowedActions } from '@/lib/assessments/actions';
import type { ActionQuery } from '@/lib/assessments/action-input';
import { type CsvColumn, writeCsv } from '@/lib/csv/write-csv';
import { listActions, readAction } from '@/lib/db/assessments/actions';
import { listMembers } from '@/lib/db/people/members';
import { schoolScope } from '@/lib/db/scope';
import { calendarDay } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';

export interface ActionList {
  readonly rows: readonly ActionRecord[];
  readonly all: number;
  readonly overdue: number;
  readonly today: string;
}

/** The actions of the actor's school that a search leaves: open ones first, by their day. */
export async function actionList(actor: Actor, query: ActionQuery): Promise<ActionList> {
  const [all, school] = await Promise.all([listActions(database(), schoolScope(actor)), currentSchool(actor)]);
  const today = calendarDay(new Date(), school.timeZone);
  return { rows: narrowedActions(all, query, today), all: all.length, overdue: all.filter((action) => isOverdue(action, today)).length, today };
}

export interface ActionView { readonly action: ActionRecord; readonly today: string; readonly mayChange: boolean; readonly mayClose: boolean }

/** One action, with what this person may do with it; null when it is not there. */
export async function actionView(actor: Actor, id: string): Promise<ActionView | null> {
  const [action, school] = await Promise.all([readAction(database(), schoolScope(actor), id), currentSchool(actor)]);
  if (action === null) return null;
  return {
    action, today: calendarDay(new Date(), school.timeZone), mayChange: can(actor.role, 'action.change'),
    mayClose: can(actor.role, 'action.close', { actor, on: { schoolId: actor.schoolId, byId: action.ownerId } }),
  };
}

export interface OwnerChoice { readonly value: string; readonly label: string }

/** Who may be given an action: everybody at work in the school. */
export async function ownerChoices(actor: Actor): Promise<readonly OwnerChoice[]> {
  const members = await listMembers(database(), schoolScope(actor));
  return members.filter(({ isActive }) => isActive).map(({ personId, name, post }) => ({ value: personId, label: post === '' ? name : `${name}, ${post}` }));
}

const COLUMNS: readonly CsvColumn<ActionRecord>[] = [
  { head: 'What', cell: (row) => row.title },
  { head: 'Details', cell: (row) => row.details },
  { head: 'Of', cell: (row) => row.of },
  { head: 'Who', cell: (row) => row.ownerName },
  { head: 'By', cell: (row) => row.dueOn },
  { head: 'State', cell: (row) => row.state },
  { head: 'Closed (UTC)', cell: (row) => row.closedAt?.toISOString().slice(0, 10) ?? null },
  { head: 'Closed by', cell: (row) => row.closedByName },
  { head: 'Note', cell: (row) => row.closedNote },
];

/** The same list as a table for a spreadsheet. */
export async function actionsCsv(actor: Actor, query: ActionQuery): Promise<string> {
  return writeCsv(COLUMNS, (await actionList(actor, query)).rows);
}

import { type ActionRecord, closeAction, inOrder, isActionState, mayChange, openAgain } from '@/lib/assessments/actions';
import type { AddActionInput, ChangeActionInput } from '@/lib/assessments/action-input';
import { no, type Decision } from '@/lib/assessments/standing';
import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import type { Author } from './begin-assessment';
import { notDone, NOT_THERE, nothing, type NotDone, OVERTAKEN, type Written } from './not-done';

const WITH_PLACE = {
  version: { select: { number: true, assessment: { select: { title: true } } } },
  incident: { select: { number: true } },
  closedBy: { select: { person: { select: { name: true } } } },
} as const;

/** Every action of a school, or those of one version, open ones first. */
export async function listActions(db: Db, scope: SchoolScope, versionIds?: readonly string[]): Promise<readonly ActionRecord[]> {
  const rows = await db.action.findMany({ where: { ...scope, ...(versionIds === undefined ? {} : { versionId: { in: [...versionIds] } }) }, include: WITH_PLACE });
  return inOrder(rows.map(actionOfRow));
}

export async function readAction(db: Db, scope: SchoolScope, id: string): Promise<ActionRecord | null> {
  const row = await db.action.findFirst({ where: { ...scope, id }, include: WITH_PLACE });
  return row === null ? null : actionOfRow(row);
}

interface Row extends Omit<ActionRecord, 'of' | 'details' | 'state' | 'closedByName' | 'closedNote'> {
  readonly details: string | null; readonly state: string; readonly closedNote: string | null;
  readonly version: { readonly number: number; readonly assessment: { readonly title: string } } | null;
  readonly incident: { readonly number: number } | null;
  readonly closedBy: { readonly person: { readonly name: string } } | null;
}

function actionOfRow({ version, incident, closedBy, details, state, closedNote, ...row }: Row): ActionRecord {
  if (!isActionState(state)) throw new Error(`unknown state ${state} of an action`);
  const { id, versionId, controlId, stopId, title, ownerId, ownerName, dueOn, createdAt, closedAt, revision } = row;
  const of = version !== null ? `${version.assessment.title}, version ${version.number}` : incident !== null ? `Incident ${incident.number}` : '';
  return { id, versionId, controlId, stopId, of, title, details: details ?? '', ownerId, ownerName, dueOn, state, createdAt, closedAt, closedByName: closedBy?.person.name ?? '', closedNote: closedNote ?? '', revision };
}

type ActionWritten = { readonly ok: true; readonly id: string } | NotDone;

/** Adds an action to a version. One control or stop has one open action at a time: two people would do it twice. */
export async function addAction(db: Db, by: Author, at: Date, { ownerId, ownerName, ...input }: AddActionInput): Promise<ActionWritten> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written<ActionWritten>> => {
    const version = await tx.assessmentVersion.findFirst({ where: { ...scope, id: input.versionId }, select: { state: true } });
    if (version === null) return nothing(NOT_THERE);
    if (version.state === 'superseded' || version.state === 'withdrawn') return nothing(notDone('This version is no longer in force. Add it to the one that is.'));
    const owner = await ownerOf(tx, scope, ownerId, ownerName);
    if (owner === null) return nothing(notDone('This person is not at work in the school.'));
    const same = input.controlId === null && input.stopId === null ? null : await tx.action.findFirst({ where: { ...scope, versionId: input.versionId, state: 'open', controlId: input.controlId, stopId: input.stopId }, select: { ownerName: true } });
    if (same !== null) return nothing(notDone(`There is an open action for it already: ${same.ownerName} does it.`));
    const { id } = await tx.action.create({ data: { ...scope, ...input, ...owner, state: 'open', byId: by.personId, createdAt: at }, select: { id: true } });
    const { title, dueOn, controlId, stopId } = input;
    return { value: { ok: true, id }, events: [{ kind: 'action.added', subjectId: id, data: { title, owner: owner.ownerName, dueOn, controlId, stopId, incidentId: null } }] };
  });
}

/** The name of an owner is copied, so that it stands there whatever becomes of the account. */
async function ownerOf(tx: Tx, scope: SchoolScope, ownerId: string | null, name: string | null): Promise<{ readonly ownerId: string | null; readonly ownerName: string } | null> {
  if (ownerId === null) return { ownerId: null, ownerName: name ?? '' };
  const member = await tx.membership.findFirst({ where: { ...scope, personId: ownerId, endedAt: null }, select: { person: { select: { name: true } } } });
  return member === null ? null : { ownerId, ownerName: member.person.name };
}

type Change<Kept> = { readonly ok: true; readonly data: Kept; readonly event: AuditEvent } | { readonly ok: false; readonly why: string };
interface Kept { readonly state: string; readonly title: string; readonly details: string | null; readonly ownerName: string; readonly dueOn: string; readonly revision: number }

/** Changes what is to be done, by whom or by when, if nobody changed it since it was read. */
export async function changeAction(db: Db, by: Author, at: Date, { actionId, revision, ownerId, ownerName, ...input }: ChangeActionInput): Promise<ActionWritten> {
  const scope = schoolScope(by);
  return change(db, by, at, actionId, async (tx, kept): Promise<Change<Readonly<Record<string, unknown>>>> => {
    const decision = mayChange(stateOf(kept));
    if (!decision.ok) return decision;
    if (kept.revision !== revision) return OVERTAKEN;
    const owner = await ownerOf(tx, scope, ownerId, ownerName);
    if (owner === null) return no('This person is not at work in the school.');
    const after = { ...input, ownerName: owner.ownerName };
    const changes = Object.fromEntries(Object.entries(after).flatMap(([name, to]) => { const from = kept[name as keyof typeof after] ?? ''; return from === to ? [] : [[name, { from, to }]]; }));
    return { ok: true, data: { ...input, ...owner }, event: { kind: 'action.changed', subjectId: actionId, data: { changes } } };
  });
}

/** Done or dropped, with a word. */
export async function closeActionOf(db: Db, by: Author, at: Date, actionId: string, to: 'done' | 'dropped', note: string): Promise<ActionWritten> {
  return change(db, by, at, actionId, (_tx, kept) => Promise.resolve(written(closeAction(stateOf(kept), to, note), (done) => ({
    data: { state: done.state, closedById: by.personId, closedAt: at, closedNote: done.note },
    event: { kind: 'action.closed', subjectId: actionId, data: { state: done.state, note: done.note } },
  }))));
}

export async function openActionAgain(db: Db, by: Author, at: Date, actionId: string, reason: string): Promise<ActionWritten> {
  return change(db, by, at, actionId, (_tx, kept) => Promise.resolve(written(openAgain(stateOf(kept), reason), ({ state }) => ({
    data: { state, closedById: null, closedAt: null, closedNote: null },
    event: { kind: 'action.opened-again', subjectId: actionId, data: { reason: reason.trim() } },
  }))));
}

function written<Made>(decision: Decision<Made>, write: (made: Made) => { readonly data: Readonly<Record<string, unknown>>; readonly event: AuditEvent }): Change<Readonly<Record<string, unknown>>> {
  return decision.ok ? { ok: true, ...write(decision.change) } : decision;
}

function stateOf({ state }: Pick<Kept, 'state'>): ActionRecord['state'] {
  if (!isActionState(state)) throw new Error(`unknown state ${state} of an action`);
  return state;
}

async function change(db: Db, by: Author, at: Date, id: string, decide: (tx: Tx, kept: Kept) => Promise<Change<Readonly<Record<string, unknown>>>>): Promise<ActionWritten> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written<ActionWritten>> => {
    const kept = await tx.action.findFirst({ where: { ...scope, id }, select: { state: true, title: true, details: true, ownerName: true, dueOn: true, revision: true } });
    if (kept === null) return nothing(notDone('This action is not there.'));
    const decided = await decide(tx, kept);
    if (!decided.ok) return nothing(notDone(decided.why));
    const { count } = await tx.action.updateMany({ where: { ...scope, id, revision: kept.revision }, data: { ...decided.data, revision: kept.revision + 1 } });
    return count === 1 ? { value: { ok: true, id }, events: [decided.event] } : nothing(OVERTAKEN);
  });
}

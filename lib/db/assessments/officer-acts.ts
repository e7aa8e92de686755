import { acceptStop, type AcceptanceInput } from '@/lib/assessments/acceptance';
import { liftSuspension, paperChanged, sendBack, signAsOfficer, suspend } from '@/lib/assessments/lifecycle';
import type { StopCondition } from '@/lib/content/model';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { countersign } from '../documents/keep-document';
import { sha256Of, type SignatureOf } from '../documents/write-document';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import type { Author } from './begin-assessment';
import { moveVersion, standingOf } from './moves';
import { type Done, notDone, NOT_THERE, nothing, OVERTAKEN, type Written } from './not-done';

const DONE = { ok: true } as const;

/** Returns a version to its preparer, with what is to be changed; the paper it was handed over with is void. */
export async function returnVersion(db: Db, by: Author, at: Date, versionId: string, comment: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const standing = await standingOf(tx, scope, versionId);
    if (standing === null) return nothing(NOT_THERE);
    if (standing.preparerId === by.personId) return nothing(notDone('You prepared it, so somebody else must check it.'));
    const decision = sendBack(standing, comment);
    if (!decision.ok) return nothing(notDone(decision.why));
    if (!(await moveVersion(tx, scope, versionId, standing, { state: 'returned', returnedAt: at }))) return nothing(OVERTAKEN);
    await tx.comment.create({ data: { ...scope, versionId, text: comment.trim(), byId: by.personId, byName: by.name, at } });
    await voidPapers(tx, scope, at, versionId);
    return { value: DONE, events: [{ kind: 'assessment.returned', subjectId: versionId, data: { reason: comment.trim() } }] };
  });
}

/** Accepts a stop condition in writing, as far as the content lets anybody; the preparer signs the changed paper again. */
export async function acceptStopOf(db: Db, by: Author, at: Date, versionId: string, stop: StopCondition, input: AcceptanceInput, today: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const standing = await standingOf(tx, scope, versionId);
    if (standing === null) return nothing(NOT_THERE);
    if (standing.preparerId === by.personId) return nothing(notDone('You prepared it, so somebody else must decide on its stop conditions.'));
    const [decision, changed] = [acceptStop(stop, input, today), paperChanged(standing)];
    if (!changed.ok) return nothing(notDone(changed.why));
    if (!decision.ok) return nothing(notDone(decision.why));
    if (!(await moveVersion(tx, scope, versionId, standing, { state: 'with-officer' }))) return nothing(OVERTAKEN);
    await tx.stopAcceptance.updateMany({ where: { ...scope, versionId, stopId: stop.id, withdrawnAt: null }, data: { withdrawnAt: at, withdrawnById: by.personId, withdrawnReason: 'written anew' } });
    await tx.stopAcceptance.create({ data: { ...scope, versionId, ...decision.change, byId: by.personId, byName: by.name, at } });
    await voidPapers(tx, scope, at, versionId);
    return { value: DONE, events: [{ kind: 'stop.accepted', subjectId: versionId, data: decision.change }] };
  });
}

/** A paper handed over is void as soon as what it says is decided otherwise. */
async function voidPapers(tx: Tx, scope: SchoolScope, at: Date, versionId: string): Promise<void> {
  await tx.document.updateMany({ where: { ...scope, versionId, kind: 'assessment', replacedAt: null, state: 'part-signed' }, data: { replacedAt: at } });
}

export interface SignOff {
  readonly versionId: string;
  readonly revision: number;
  readonly documentId: string;
  readonly documentNumber: string;
  readonly documentRevision: number;
  readonly bytes: Uint8Array;
  readonly signature: SignatureOf;
  readonly certificateFingerprint: string;
  readonly openStops: readonly string[];
  readonly extreme: readonly string[];
}

/** The officer's signature, which puts a version in force and the one before it out of force. */
export async function signOff(db: Db, by: Author, at: Date, what: SignOff): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const standing = await standingOf(tx, scope, what.versionId);
    if (standing === null) return nothing(NOT_THERE);
    const decision = signAsOfficer({ standing, personId: by.personId, openStops: what.openStops, extreme: what.extreme });
    if (!decision.ok) return nothing(notDone(decision.why));
    if (standing.revision !== what.revision || !(await moveVersion(tx, scope, what.versionId, standing, { state: 'signed', signedAt: at }))) return nothing(OVERTAKEN);
    const { documentId, documentNumber: number, documentRevision: before, bytes, signature, certificateFingerprint } = what;
    const signed = await countersign(tx, scope, at, { documentId, number, before, bytes }, { ...signature, certificateFingerprint });
    if (signed === null) return nothing(OVERTAKEN);
    const superseded = await supersede(tx, scope, at, standing.assessmentId, what.versionId);
    return { value: DONE, events: [
      { kind: 'assessment.signed', subjectId: what.versionId, data: { part: 'officer', documentId, certificateFingerprint, sha256: sha256Of(bytes) } },
      ...signed,
      ...superseded.map((id) => ({ kind: 'assessment.superseded' as const, subjectId: id, data: { byVersionId: what.versionId } })),
    ] };
  });
}

async function supersede(tx: Tx, scope: SchoolScope, at: Date, assessmentId: string, versionId: string): Promise<readonly string[]> {
  const before = await tx.assessmentVersion.findMany({ where: { ...scope, assessmentId, state: 'signed', id: { not: versionId } }, select: { id: true } });
  await tx.assessmentVersion.updateMany({ where: { ...scope, id: { in: before.map((one) => one.id) } }, data: { state: 'superseded', supersededAt: at } });
  return before.map((one) => one.id);
}

/** Takes a signed version out of force at once. */
export async function suspendVersion(db: Db, by: Author, at: Date, versionId: string, reason: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const standing = await standingOf(tx, scope, versionId);
    const decision = standing === null ? null : suspend(standing, reason);
    if (decision === null) return nothing(NOT_THERE);
    if (!decision.ok) return nothing(notDone(decision.why));
    await tx.suspension.create({ data: { ...scope, versionId, reason: reason.trim(), byId: by.personId, byName: by.name, at } });
    return { value: DONE, events: [{ kind: 'assessment.suspended', subjectId: versionId, data: { reason: reason.trim() } }] };
  });
}

/** Puts a suspended version in force again; the suspension stays on record. */
export async function liftSuspensionOf(db: Db, by: Author, at: Date, versionId: string, reason: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const standing = await standingOf(tx, scope, versionId);
    const decision = standing === null ? null : liftSuspension(standing, reason);
    if (decision === null) return nothing(NOT_THERE);
    if (!decision.ok) return nothing(notDone(decision.why));
    await tx.suspension.updateMany({ where: { ...scope, versionId, liftedAt: null }, data: { liftedById: by.personId, liftedByName: by.name, liftedAt: at, liftedReason: reason.trim() } });
    return { value: DONE, events: [{ kind: 'assessment.suspension-lifted', subjectId: versionId, data: { reason: reason.trim() } }] };
  });
}

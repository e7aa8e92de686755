import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import { caretakerLinkEnd, type SendQuestionsInput } from '@/lib/assessments/caretaker';
import { isOpen } from '@/lib/assessments/standing';
import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import type { Author } from './begin-assessment';
import { type Done, notDone, NOT_THERE, nothing, type Written } from './not-done';

export interface CaretakerLink {
  readonly id: string;
  readonly schoolId: string;
  readonly versionId: string;
  readonly forWhom: string;
  readonly questionIds: readonly string[];
  readonly byName: string;
  readonly createdAt: Date;
  readonly expiresAt: Date;
  readonly answeredAt: Date | null;
  readonly answeredByName: string | null;
  readonly revokedAt: Date | null;
  /** state of the version that the questions belong to */
  readonly state: string;
}

const WITH_VERSION = { version: { select: { state: true } }, by: { select: { person: { select: { name: true } } } } } as const;
interface Row extends Omit<CaretakerLink, 'questionIds' | 'byName' | 'state'> { readonly questionIdsJson: string; readonly version: { readonly state: string }; readonly by: { readonly person: { readonly name: string } } }

function linkOfRow({ questionIdsJson, version, by, ...row }: Row): CaretakerLink {
  return { ...row, questionIds: z.array(z.string()).parse(JSON.parse(questionIdsJson)), byName: by.person.name, state: version.state };
}

/** Makes a link's row and marks the questions as waiting for its person. Of the link's secret only the seal is kept. */
export async function sendQuestions(db: Db, by: Author, at: Date, input: SendQuestionsInput, sealOfLink: (id: string) => string): Promise<Done> {
  const scope = schoolScope(by);
  const id = randomUUID();
  const expiresAt = caretakerLinkEnd(at, input.days);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const version = await tx.assessmentVersion.findFirst({ where: { ...scope, id: input.versionId }, select: { state: true } });
    if (version === null) return nothing(NOT_THERE);
    if (!isOpen(version.state)) return nothing(notDone('This version is closed: its answers do not change any more.'));
    await tx.caretakerLink.create({ data: { ...scope, id, versionId: input.versionId, tokenSeal: sealOfLink(id), forWhom: input.forWhom, questionIdsJson: JSON.stringify(input.questions), byId: by.personId, createdAt: at, expiresAt } });
    const waits = await waitFor(tx, by, at, input);
    return { value: { ok: true }, events: [{ kind: 'questions.sent', subjectId: input.versionId, data: { linkId: id, forWhom: input.forWhom, questionIds: input.questions, expiresAt: expiresAt.toISOString() } }, ...waits] };
  });
}

/** Says on each question for whom it waits. The answer's own revision stays: nobody's answer was changed. */
async function waitFor(tx: Tx, by: Author, at: Date, { versionId, questions, forWhom }: SendQuestionsInput): Promise<readonly AuditEvent[]> {
  const scope = schoolScope(by);
  for (const questionId of questions) {
    const { count } = await tx.answer.updateMany({ where: { ...scope, versionId, questionId }, data: { waitsFor: forWhom } });
    if (count === 0) await tx.answer.create({ data: { ...scope, versionId, questionId, origin: 'caretaker', waitsFor: forWhom, answeredByName: by.name, answeredAt: at, revision: 0 } });
  }
  await tx.assessmentVersion.updateMany({ where: { ...scope, id: versionId }, data: { revision: { increment: 1 } } });
  return questions.map((questionId) => ({ kind: 'answer.waits', subjectId: versionId, data: { questionId, waitsFor: forWhom } }));
}

/** Every link of a version, the latest first. */
export async function listCaretakerLinks(db: Db, scope: SchoolScope, versionId: string): Promise<readonly CaretakerLink[]> {
  const rows = await db.caretakerLink.findMany({ where: { ...scope, versionId }, orderBy: [{ createdAt: 'desc' }, { id: 'asc' }], include: WITH_VERSION });
  return rows.map(linkOfRow);
}

/** Returns the link by the seal of its secret, or null. Whoever holds it is of no school. */
export async function findCaretakerLink(db: Pick<Tx, 'caretakerLink'>, tokenSeal: string): Promise<CaretakerLink | null> {
  const row = await db.caretakerLink.findUnique({ where: { tokenSeal }, include: WITH_VERSION });
  return row === null ? null : linkOfRow(row);
}

/** Takes a link back; its questions wait for nobody any more, unless another link asks for them too. */
export async function revokeCaretakerLink(db: Db, by: Author, at: Date, linkId: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const row = await tx.caretakerLink.findFirst({ where: { ...scope, id: linkId }, include: WITH_VERSION });
    if (row === null) return nothing(notDone('This link is not there.'));
    const link = linkOfRow(row);
    if (link.revokedAt !== null) return nothing(notDone('This link was taken back already.'));
    await tx.caretakerLink.updateMany({ where: { ...scope, id: linkId, revokedAt: null }, data: { revokedAt: at, revokedById: by.personId } });
    const others = await tx.caretakerLink.findMany({ where: { ...scope, versionId: link.versionId, revokedAt: null, answeredAt: null, expiresAt: { gt: at } }, include: WITH_VERSION });
    const stillAsked = new Set(others.flatMap((other) => linkOfRow(other).questionIds));
    const free = link.questionIds.filter((id) => !stillAsked.has(id));
    if (isOpen(link.state)) await tx.answer.updateMany({ where: { ...scope, versionId: link.versionId, questionId: { in: free }, waitsFor: link.forWhom }, data: { waitsFor: null } });
    return { value: { ok: true }, events: [{ kind: 'questions.revoked', subjectId: link.versionId, data: { linkId } }] };
  });
}

import type { BeginAssessmentInput } from '@/lib/assessments/assessment-input';
import { newVersion } from '@/lib/assessments/lifecycle';
import type { VersionRecord } from '@/lib/assessments/version';
import type { AuditAuthor } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { preparedSigned } from './prepared-signed';
import { readVersion } from './read-version';

export interface Author extends AuditAuthor { readonly personId: string }
export type Begun = { readonly ok: true; readonly versionId: string } | { readonly ok: false; readonly field: string; readonly why: string };

/**
 * Begins an assessment of a place, or the next version of one by copying its answers. The signed version stays
 * in force until the next is signed.
 * @param contentVersion edition that the new version is answered and scored with, for good
 */
export async function beginAssessment(db: Db, by: Author, at: Date, input: BeginAssessmentInput, contentVersion: string): Promise<Begun> {
  return recordChange(db, by, at, async (tx) => writeBeginning(tx, by, at, input, contentVersion));
}

type Beginning = { readonly kind: 'assessment.begun'; readonly subjectId: string; readonly data: { readonly title: string; readonly number: number; readonly contentVersion: string; readonly basedOnId: string | null } };

/** The same inside of a transaction, for what has to be written with it. */
export async function writeBeginning(tx: Tx, by: Author, at: Date, input: BeginAssessmentInput, contentVersion: string): Promise<{ value: Begun; events: readonly Beginning[] }> {
  const scope = schoolScope(by);
  const site = await tx.site.findFirst({ where: { ...scope, id: input.siteId, archivedAt: null }, select: { id: true } });
  if (site === null) return { value: { ok: false, field: 'siteId', why: 'This place is not there any more. Choose another' }, events: [] };
  const copied = input.copyFromId === null ? null : await readVersion(tx, scope, input.copyFromId);
  if (input.copyFromId !== null && copied === null) return { value: { ok: false, field: 'copyFromId', why: 'The version to copy is not there' }, events: [] };
  const refusal = copied === null ? null : await whyNotNext(tx, scope, copied, site.id);
  if (refusal !== null) return { value: { ok: false, field: 'copyFromId', why: refusal }, events: [] };
  const assessmentId = copied?.assessmentId ?? (await tx.assessment.create({ data: { ...scope, siteId: site.id, title: input.title, createdAt: at }, select: { id: true } })).id;
  const number = await nextNumber(tx, assessmentId);
  const version = await tx.assessmentVersion.create({
    data: {
      ...scope, assessmentId, number, state: 'draft', contentVersion, season: input.season, basedOnId: copied?.id ?? null, preparedById: by.personId, preparedByName: by.name,
      ...(copied === null ? {} : { settingsJson: JSON.stringify(copied.settings) }), createdAt: at,
    },
    select: { id: true },
  });
  if (copied !== null) await copyAnswers(tx, scope, copied, version.id, by, at);
  return { value: { ok: true, versionId: version.id }, events: [{ kind: 'assessment.begun', subjectId: version.id, data: { title: input.title, number, contentVersion, basedOnId: copied?.id ?? null } }] };
}

async function whyNotNext(tx: Tx, scope: SchoolScope, copied: VersionRecord, siteId: string): Promise<string | null> {
  if (copied.siteId !== siteId) return 'That version is of another place';
  const decision = newVersion({ state: copied.state, preparerId: copied.preparedById, preparerSigned: await preparedSigned(tx, scope, copied.id), suspended: false });
  if (!decision.ok) return decision.why;
  const open = await tx.assessmentVersion.count({ where: { ...scope, assessmentId: copied.assessmentId, state: { in: ['draft', 'with-officer', 'returned'] } } });
  return open === 0 ? null : 'A next version is being prepared already';
}

async function nextNumber(tx: Tx, assessmentId: string): Promise<number> {
  const last = await tx.assessmentVersion.aggregate({ where: { assessmentId }, _max: { number: true } });
  return (last._max.number ?? 0) + 1;
}

async function copyAnswers(tx: Tx, scope: SchoolScope, from: VersionRecord, versionId: string, by: Author, at: Date): Promise<void> {
  await tx.answer.createMany({
    data: from.answers.filter((answer) => answer.value !== null).map((answer) => ({
      ...scope, versionId, questionId: answer.questionId, valueJson: JSON.stringify(answer.value), notSureJson: answer.notSureTicks.length === 0 ? null : JSON.stringify(answer.notSureTicks),
      note: answer.note === '' ? null : answer.note, origin: 'copied', answeredById: by.personId, answeredByName: by.name, answeredAt: at,
    })),
  });
}

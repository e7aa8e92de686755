import { reviseAnswer } from '@/lib/assessments/answer-revision';
import { isOpen } from '@/lib/assessments/standing';
import type { AnswerOrigin, AnswerRecord } from '@/lib/assessments/version';
import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import type { Answer } from '@/lib/core/document';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { answerRecord } from './read-version';

export interface AnswerToSave {
  readonly versionId: string;
  readonly questionId: string;
  readonly value: Answer | null;
  readonly notSureTicks: readonly string[];
  readonly note: string;
  /** revision that was read when the page was opened, 0 when there was none */
  readonly seen: number;
  readonly origin: AnswerOrigin;
}
export type AnswerSaved =
  | { readonly ok: true; readonly changed: boolean }
  /** somebody else was faster: what stands there now, to be shown beside what was typed */
  | { readonly ok: false; readonly why: string; readonly kept: AnswerRecord | null };

/**
 * Saves the answers of one page, all of them or none, each with its entry in the log. An answer that somebody else
 * changed meanwhile is not written over.
 * @param answers each already checked against its question
 */
export async function saveAnswers(db: Db, by: AuditAuthor, at: Date, versionId: string, answers: readonly NewAnswer[]): Promise<AnswerSaved> {
  return recordChange(db, by, at, async (tx) => writeAnswers(tx, schoolScope(by), by, at, versionId, answers)).catch(refusalOf);
}

export type NewAnswer = Omit<AnswerToSave, 'versionId'>;

/**
 * Writes answers inside of a transaction, for what has to be written with them.
 * @throws Overtaken when somebody else changed one of them: the transaction is to be given up
 */
export async function writeAnswers(tx: Tx, scope: SchoolScope, by: AuditAuthor, at: Date, versionId: string, answers: readonly NewAnswer[]): Promise<{ value: AnswerSaved; events: readonly AuditEvent[] }> {
  const version = await tx.assessmentVersion.findFirst({ where: { ...scope, id: versionId }, select: { state: true } });
  if (version === null || !isOpen(version.state)) return { value: { ok: false, why: 'This version is closed: its answers do not change any more.', kept: null }, events: [] };
  const events: AuditEvent[] = [];
  for (const answer of answers) {
    const row = await tx.answer.findUnique({ where: { versionId_questionId: { versionId, questionId: answer.questionId } } });
    const kept = row === null ? null : answerRecord(row);
    const decision = reviseAnswer(kept === null ? null : { ...kept, by: kept.byName }, answer);
    if (!decision.ok) throw new Overtaken(decision.why, kept);
    if (decision.change.kind === 'same') continue;
    await write(tx, { ...scope, versionId }, answer, { isNew: kept === null, revision: decision.change.revision }, by, at);
    events.push({ kind: 'answer.saved', subjectId: versionId, data: { questionId: answer.questionId, from: jsonOf(kept?.value ?? null), to: jsonOf(answer.value), noteFrom: kept?.note ?? null, noteTo: answer.note, origin: answer.origin, revision: decision.change.revision } });
  }
  // whoever hands over or signs names the revision that was read: a change of answers is a change of that
  if (events.length > 0) await tx.assessmentVersion.updateMany({ where: { ...scope, id: versionId }, data: { revision: { increment: 1 } } });
  return { value: { ok: true, changed: events.length > 0 }, events };
}

/** What a transaction that was given up for somebody else's change comes to. */
export function refusalOf(error: unknown): Extract<AnswerSaved, { readonly ok: false }> {
  if (error instanceof Overtaken) return { ok: false, why: error.message, kept: error.kept };
  throw error;
}

/** Thrown to take back what the same page wrote before it. */
class Overtaken extends Error {
  constructor(why: string, readonly kept: AnswerRecord | null) { super(why); }
}

async function write(tx: Tx, key: { readonly schoolId: string; readonly versionId: string }, answer: NewAnswer, { isNew, revision }: { readonly isNew: boolean; readonly revision: number }, by: AuditAuthor, at: Date): Promise<void> {
  const data = {
    valueJson: answer.value === null ? null : JSON.stringify(answer.value),
    notSureJson: answer.notSureTicks.length === 0 ? null : JSON.stringify(answer.notSureTicks),
    note: answer.note === '' ? null : answer.note,
    origin: answer.origin, waitsFor: null, answeredById: by.personId, answeredByName: by.name, answeredAt: at,
  };
  if (isNew) { await tx.answer.create({ data: { ...key, questionId: answer.questionId, ...data } }); return; }
  const { count } = await tx.answer.updateMany({ where: { ...key, questionId: answer.questionId, revision: revision - 1 }, data: { ...data, revision } });
  if (count !== 1) throw new Overtaken('Somebody has changed this answer while you were at it.', null);
}

/** A copy that is plain JSON, for the log. */
const jsonOf = (value: Answer | null): string | number | boolean | null | { [key: string]: string | number } | string[] => JSON.parse(JSON.stringify(value)) as ReturnType<typeof jsonOf>;

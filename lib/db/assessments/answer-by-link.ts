import { type CaretakerVerdict, judgeCaretakerLink } from '@/lib/assessments/caretaker';
import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope } from '../scope';
import { type CaretakerLink, findCaretakerLink } from './caretaker-links';
import { type AnswerSaved, type NewAnswer, refusalOf, writeAnswers } from './save-answer';

/** Saves what somebody answered by a link, under the name they gave; the link is looked at again inside of the transaction. */
export async function answerByLink(db: Db, link: CaretakerLink, name: string, at: Date, tokenSeal: string, answers: readonly NewAnswer[]): Promise<AnswerSaved> {
  const scope = schoolScope(link);
  const by = { ...scope, personId: null, name };
  return recordChange(db, by, at, async (tx): Promise<{ value: AnswerSaved; events: readonly AuditEvent[] }> => {
    const verdict: CaretakerVerdict<CaretakerLink> = judgeCaretakerLink(await findCaretakerLink(tx, tokenSeal), at);
    if (!verdict.ok) return { value: { ok: false, why: verdict.reason, kept: null }, events: [] };
    const written = await writeAnswers(tx, scope, by, at, link.versionId, answers);
    if (!written.value.ok) return written;
    await tx.caretakerLink.updateMany({ where: { ...scope, id: link.id }, data: { answeredAt: at, answeredByName: name } });
    return { value: written.value, events: [...written.events, { kind: 'questions.answered', subjectId: link.versionId, data: { linkId: link.id, questionIds: answers.filter(({ value }) => value !== null).map(({ questionId }) => questionId) } }] };
  }).catch(refusalOf);
}

/** Counts that a link was opened. No entry in the log: reading changes nothing. */
export async function noteOpened(db: Db, link: CaretakerLink, at: Date): Promise<void> {
  await db.caretakerLink.updateMany({ where: { ...schoolScope(link), id: link.id }, data: { openedCount: { increment: 1 }, lastOpenedAt: at } });
}

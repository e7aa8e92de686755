import type { EvidenceToKeep } from '@/lib/assessments/evidence';
import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope } from '../scope';
import { dropEvidence, keepEvidence } from './evidence';
import { type AnswerSaved, type NewAnswer, refusalOf, writeAnswers } from './save-answer';

export interface PageToSave {
  readonly versionId: string;
  readonly answers: readonly NewAnswer[];
  readonly photos: readonly EvidenceToKeep[];
  /** a photo to be taken away */
  readonly drop: string | undefined;
}

/** Saves a page: its answers, its photos and the photo taken away, all of it or nothing. */
export async function saveWholePage(db: Db, by: AuditAuthor, at: Date, { versionId, answers, photos, drop }: PageToSave): Promise<AnswerSaved> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<{ value: AnswerSaved; events: readonly AuditEvent[] }> => {
    const written = await writeAnswers(tx, scope, by, at, versionId, answers);
    if (!written.value.ok) return written;
    const pictures = [...await keepEvidence(tx, scope, by, at, versionId, photos), ...(drop === undefined ? [] : await dropEvidence(tx, scope, at, versionId, drop))];
    // The paper names its photos: whoever hands it over must have seen them. Answers have counted for themselves.
    if (pictures.length > 0 && written.events.length === 0) await tx.assessmentVersion.updateMany({ where: { ...scope, id: versionId }, data: { revision: { increment: 1 } } });
    return { value: written.value, events: [...written.events, ...pictures] };
  }).catch(refusalOf);
}

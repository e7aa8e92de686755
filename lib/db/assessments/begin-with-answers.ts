import type { BeginAssessmentInput } from '@/lib/assessments/assessment-input';
import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope } from '../scope';
import { type Author, type Begun, writeBeginning } from './begin-assessment';
import { type NewAnswer, writeAnswers } from './save-answer';

interface Imported { readonly answers: readonly NewAnswer[]; readonly settingsJson: string }

/** Begins an assessment of a place with answers from elsewhere, all of them or nothing. */
export async function beginWithAnswers(db: Db, by: Author, at: Date, input: BeginAssessmentInput, contentVersion: string, { answers, settingsJson }: Imported): Promise<Begun> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<{ value: Begun; events: readonly AuditEvent[] }> => {
    const begun = await writeBeginning(tx, by, at, input, contentVersion);
    if (!begun.value.ok) return begun;
    const { versionId } = begun.value;
    await tx.assessmentVersion.updateMany({ where: { ...scope, id: versionId }, data: { settingsJson } });
    const { events } = await writeAnswers(tx, scope, by, at, versionId, answers);
    return { value: begun.value, events: [...begun.events, ...events] };
  });
}

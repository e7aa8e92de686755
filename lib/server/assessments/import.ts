import 'server-only';
import { type ImportInput, notTaken } from '@/lib/assessments/import-input';
import { SettingsSchema } from '@/lib/assessments/version';
import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { beginWithAnswers } from '@/lib/db/assessments/begin-with-answers';
import type { NewAnswer } from '@/lib/db/assessments/save-answer';
import type { Assessment } from '@/lib/interchange/assessment-schema';
import { faultInWords } from '@/lib/interchange/json/fault';
import { readAssessment } from '@/lib/interchange/read-assessment';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

/** More than anybody puts right at once; the rest comes at the next try. */
const MOST_FAULTS = 20;

/** Begins a draft from a document: its answers, notes and settings, all of them or nothing. */
export async function importAssessment(actor: Actor, { siteId, season, file, without }: ImportInput): Promise<Outcome> {
  const read = readAssessment(await file.text());
  if (!read.ok) return { ok: false, faults: read.faults.slice(0, MOST_FAULTS).map((fault) => ({ field: 'file', message: faultInWords(fault) })) };
  const behind = notTaken(read.assessment);
  if (behind.length > 0 && without !== 'yes') return refused('without', `This file holds more than answers: ${behind.join(', ')}. That stays behind, so the figures here will be others. Choose the file again and say that this is right`);
  const { assessment, content, document } = read;
  const answers = content.questions.flatMap((question) => newAnswer(question, document.answers[question.id], assessment));
  const settings = SettingsSchema.parse({ effortBudget: assessment.effortBudget, ...(typeof assessment.matrix === 'string' ? { matrix: assessment.matrix } : {}) });
  const begun = await beginWithAnswers(database(), actor, new Date(), { siteId, title: assessment.title, season, copyFromId: null }, content.version, { answers, settingsJson: JSON.stringify(settings) });
  return begun.ok ? { ok: true, then: `/assessments/${begun.versionId}` } : refused(begun.field, begun.why);
}

function newAnswer({ id }: Question, value: Answer | undefined, { notes, notSureTicks }: Assessment): readonly NewAnswer[] {
  const note = notes?.[id] ?? '';
  if (value === undefined && note === '') return [];
  return [{ questionId: id, value: value ?? null, notSureTicks: notSureTicks?.[id] ?? [], note, seen: 0, origin: 'imported' }];
}

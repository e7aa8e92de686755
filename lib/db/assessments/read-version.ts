import { z } from 'zod';
import { type AnswerRecord, AnswerValueSchema, ScopeSchema, SettingsSchema, type VersionRecord } from '@/lib/assessments/version';
import { AssessmentStateSchema } from '@/lib/assessments/standing';
import type { Db } from '../client';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

const WITH_ANSWERS = { answers: true, assessment: { include: { site: { select: { name: true } } } } } as const;

/** Returns one version with its answers, or null when the school has none of that id. */
export async function readVersion(db: Db | Tx, scope: SchoolScope, versionId: string): Promise<VersionRecord | null> {
  const row = await db.assessmentVersion.findFirst({ where: { ...scope, id: versionId }, include: WITH_ANSWERS });
  if (row === null) return null;
  const { assessment, answers, scopeJson, settingsJson, state, season, ...version } = row;
  return {
    ...version,
    state: AssessmentStateSchema.parse(state),
    season: season ?? '',
    siteId: assessment.siteId,
    siteName: assessment.site.name,
    title: assessment.title,
    scope: ScopeSchema.parse(JSON.parse(scopeJson)),
    settings: SettingsSchema.parse(JSON.parse(settingsJson)),
    answers: answers.map(answerRecord),
  };
}

interface AnswerRow { readonly questionId: string; readonly valueJson: string | null; readonly notSureJson: string | null; readonly note: string | null; readonly origin: string; readonly waitsFor: string | null; readonly answeredByName: string; readonly answeredAt: Date; readonly revision: number }

export function answerRecord(row: AnswerRow): AnswerRecord {
  return {
    questionId: row.questionId,
    value: row.valueJson === null ? null : AnswerValueSchema.parse(JSON.parse(row.valueJson)),
    notSureTicks: row.notSureJson === null ? [] : z.array(z.string()).parse(JSON.parse(row.notSureJson)),
    note: row.note ?? '',
    origin: row.origin,
    waitsFor: row.waitsFor ?? '',
    byName: row.answeredByName,
    at: row.answeredAt,
    revision: row.revision,
  };
}

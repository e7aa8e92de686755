import { z } from 'zod';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import type { AssessmentState } from './standing';

/** What was seen and what was not, in the preparer's words. */
export const ScopeSchema = z.object({ seen: z.string().default(''), onTrust: z.string().default(''), visitedBy: z.string().default(''), /** whom it is handed to */ officerId: z.string().default('') });
export type Scope = z.output<typeof ScopeSchema>;

export const MATRICES = ['five-by-five', 'mil-std-882e', 'three-by-three'] as const;

/** What a document needs besides its answers. */
export const SettingsSchema = z.object({
  matrix: z.enum(MATRICES).optional(),
  effortBudget: z.number().min(0).max(120).optional(),
  /** what the school logged of each risk, as it was when the version was handed over; a draft takes what is logged now */
  record: z.record(z.string(), z.object({ events: z.number().int().min(0), exposure: z.number().positive(), preventiveProduct: z.number().min(0).max(1).optional() })).optional(),
});
export type Settings = z.output<typeof SettingsSchema>;

/** Answers stand as the document holds them; they were checked when they were saved, and are again when they are scored. */
export const AnswerValueSchema: z.ZodType<Answer> = z.union([z.string(), z.array(z.string()), z.record(z.string(), z.number()), z.record(z.string(), z.enum(['yes', 'partly', 'no', 'not sure']))]);

/** Where an answer comes from. */
export const ANSWER_ORIGINS = ['typed', 'from-site', 'from-packs', 'copied', 'caretaker', 'imported'] as const;
export type AnswerOrigin = (typeof ANSWER_ORIGINS)[number];

export interface AnswerRecord {
  readonly questionId: string;
  /** null while there is only a note */
  readonly value: Answer | null;
  readonly notSureTicks: readonly string[];
  readonly note: string;
  readonly origin: string;
  /** whom it was sent to, in words; empty when nobody */
  readonly waitsFor: string;
  readonly byName: string;
  readonly at: Date;
  readonly revision: number;
}

/** One version of an assessment with all its answers. */
export interface VersionRecord {
  readonly id: string;
  readonly assessmentId: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly title: string;
  readonly number: number;
  readonly state: AssessmentState;
  readonly contentVersion: string;
  readonly season: string;
  readonly preparedById: string;
  readonly preparedByName: string;
  readonly visited: boolean | null;
  readonly visitedOn: string | null;
  readonly scope: Scope;
  readonly settings: Settings;
  readonly createdAt: Date;
  readonly submittedAt: Date | null;
  readonly signedAt: Date | null;
  readonly reviewBy: string | null;
  readonly revision: number;
  readonly answers: readonly AnswerRecord[];
}

/** One text for what is said of the visit, to see whether it is still what somebody read. */
export function scopeFingerprint({ visited, visitedOn, scope }: Pick<VersionRecord, 'visited' | 'visitedOn' | 'scope'>): string {
  return JSON.stringify([visited, visitedOn, scope.seen, scope.onTrust, scope.visitedBy]);
}

/**
 * The document that is scored and exported: the answers as they are now.
 * @param planned controls that open actions are to put in place
 */
export function documentOf(version: VersionRecord, planned: readonly string[] = []): AssessmentDocument {
  const answered = version.answers.filter((answer): answer is AnswerRecord & { readonly value: Answer } => answer.value !== null);
  const ticks = answered.filter((answer) => answer.notSureTicks.length > 0);
  return {
    id: version.id,
    title: version.title,
    answers: Object.fromEntries(answered.map((answer) => [answer.questionId, answer.value])),
    ...(ticks.length === 0 ? {} : { notSureTicks: Object.fromEntries(ticks.map((answer) => [answer.questionId, answer.notSureTicks])) }),
    ...(planned.length === 0 ? {} : { planned: [...new Set(planned)].sort() }),
    ...version.settings,
    contentVersion: version.contentVersion,
  };
}

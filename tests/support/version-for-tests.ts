import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { AnswerRecord, VersionRecord } from '@/lib/assessments/version';
import { edition2 } from '@/lib/content/edition-2';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import { readAssessment } from '@/lib/interchange/read-assessment';

const AT = new Date('2026-11-25T08:00:00.000Z');

/** An answer as the database gives it. */
export function answerRecord(questionId: string, value: Answer | null, more: Partial<AnswerRecord> = {}): AnswerRecord {
  return { questionId, value, notSureTicks: [], note: '', origin: 'typed', waitsFor: '', byName: 'Kim Marsh', at: AT, revision: 1, ...more };
}

/** A draft of our own invention. */
export function versionRecord(more: Partial<VersionRecord> = {}): VersionRecord {
  return {
    id: 'version-1', assessmentId: 'assessment-1', siteId: 'site-1', siteName: 'Main building', title: 'Room 14', number: 1, state: 'draft', contentVersion: edition2.version, season: '2026/27',
    preparedById: 'kim', preparedByName: 'Kim Marsh', visited: null, visitedOn: null, scope: { seen: '', onTrust: '', visitedBy: '', officerId: '' }, settings: {}, createdAt: AT, submittedAt: null, signedAt: null, reviewBy: null, revision: 1, answers: [], ...more,
  };
}

/** One of the rooms that come with the program. */
export function exampleDocument(name: string): AssessmentDocument {
  const read = readAssessment(readFileSync(path.join(process.cwd(), 'public', 'examples', `${name}.json`), 'utf8'));
  if (!read.ok) throw new Error(`the example ${name} cannot be read`);
  return read.document;
}

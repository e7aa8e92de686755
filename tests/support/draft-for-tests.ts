import { edition2 } from '@/lib/content/edition-2';
import { beginAssessment } from '@/lib/db/assessments/begin-assessment';
import type { Db } from '@/lib/db/client';
import type { Member } from '@/lib/db/people/find-member';
import { memberForTest, schoolForTest, type SchoolForTest } from './school-for-tests';

/** A school with a teacher and the draft of an assessment that the teacher prepares. */
export interface DraftForTest { readonly ours: SchoolForTest; readonly teacher: Member; readonly versionId: string }

export async function draftForTest(db: Db, at: Date): Promise<DraftForTest> {
  const ours = await schoolForTest(db, 'Ours');
  const teacher = await memberForTest(db, ours.scope, 'organiser', 'K. M.');
  const begun = await beginAssessment(db, teacher, at, { siteId: ours.siteId, title: 'Room 9', season: null, copyFromId: null }, edition2.version);
  if (!begun.ok) throw new Error(begun.why);
  return { ours, teacher, versionId: begun.versionId };
}

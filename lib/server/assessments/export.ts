import 'server-only';
import { writeAssessment } from '@/lib/interchange/write-assessment';
import type { Actor } from '../actor';
import { currentSchool } from '../people/current-school';
import { versionInFull } from '../signing/material';

export interface ExportedDocument { readonly fileName: string; readonly text: string }

/** A version as a `sandbucket-assessment.v1` document: the command gives the same figures for it. Null when it is not there. */
export async function exportAssessment(actor: Actor, versionId: string): Promise<ExportedDocument | null> {
  const [found, school] = await Promise.all([versionInFull(actor, versionId), currentSchool(actor)]);
  if (found === null) return null;
  const { version, scored: { document } } = found;
  const notes = Object.fromEntries(version.answers.filter(({ note }) => note !== '').map(({ questionId, note }) => [questionId, note]));
  const { id, title, contentVersion, answers, notSureTicks, planned, record, effortBudget, matrix } = document;
  const text = writeAssessment({
    id, title, contentVersion, school: school.schoolName, site: version.siteName, preparedBy: initialsOf(version.preparedByName), preparedOn: version.createdAt.toISOString().slice(0, 10),
    ...(Object.keys(notes).length === 0 ? {} : { notes }),
    answers: { ...answers } as Parameters<typeof writeAssessment>[0]['answers'],
    ...(notSureTicks === undefined ? {} : { notSureTicks: Object.fromEntries(Object.entries(notSureTicks).map(([question, lines]) => [question, [...lines]])) }),
    ...(planned === undefined ? {} : { planned: [...planned] }),
    ...(record === undefined ? {} : { record: { ...record } }),
    effortBudget,
    matrix: typeof matrix === 'string' ? matrix : undefined,
  });
  return { fileName: `${slug(title)}-version-${version.number}.json`, text };
}

/** "Kim Marsh" is "K. M.": a document names nobody in full. */
function initialsOf(name: string): string | undefined {
  const letters = name.split(/[\s-]+/u).flatMap((word) => /\p{L}/u.exec(word)?.[0] ?? []).slice(0, 2);
  return letters.length === 0 ? undefined : letters.map((letter) => `${letter.toUpperCase()}.`).join(' ');
}

const slug = (title: string): string => title.toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/gu, '-').replace(/^-+|-+$/gu, '').slice(0, 60) || 'assessment';

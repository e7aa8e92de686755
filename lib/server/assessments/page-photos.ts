import 'server-only';
import { type EvidenceToKeep, tooManyPhotos } from '@/lib/assessments/evidence';
import { photoField } from '@/lib/assessments/page-fields';
import type { SavePageInput } from '@/lib/assessments/save-page-input';
import type { Question } from '@/lib/content/model';
import { listEvidence, readEvidence } from '@/lib/db/assessments/evidence';
import { schoolScope } from '@/lib/db/scope';
import type { Fault } from '@/lib/forms/form-state';
import type { Actor } from '../actor';
import { database } from '../database';
import { cleanPhotos, filesOf } from '../photos/clean-photos';

export interface PagePhotos { readonly photos: readonly EvidenceToKeep[]; readonly faults: readonly Fault[] }

/** The photos of a form, each drawn anew; a fault for each file that is none that can be kept. */
export async function photosOfPage(actor: Actor, input: SavePageInput, questions: readonly Question[]): Promise<PagePhotos> {
  const photos: EvidenceToKeep[] = [];
  const faults: Fault[] = [];
  const sent = questions.map(({ id }) => ({ id, field: photoField(id), files: filesOf(input[photoField(id)]) })).filter(({ files }) => files.length > 0);
  const there = sent.length === 0 ? [] : await listEvidence(database(), schoolScope(actor), input.versionId);
  for (const { id, field, files } of sent) {
    const many = tooManyPhotos(there.filter(({ questionId }) => questionId === id).length, files.length);
    if (many !== null) { faults.push({ field, message: many }); continue; }
    const { kept, refused } = await cleanPhotos(files);
    photos.push(...kept.map((photo) => ({ ...photo, questionId: id })));
    faults.push(...refused.map((message) => ({ field, message })));
  }
  return { photos, faults };
}

/** A photo of a version of the actor's school, or null. */
export function evidenceOf(actor: Actor, versionId: string, evidenceId: string): Promise<{ readonly mimeType: string; readonly bytes: Uint8Array<ArrayBuffer> } | null> {
  return readEvidence(database(), schoolScope(actor), versionId, evidenceId);
}

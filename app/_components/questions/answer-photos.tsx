'use client';

import Image from 'next/image';
import { FormSubmit } from '@/app/_components/form/form-fields';
import type { EvidenceShown } from '@/lib/assessments/asked-question';
import { DROP_FIELD } from '@/lib/assessments/page-fields';

interface AnswerPhotosProps { readonly photos: readonly EvidenceShown[]; readonly question: string; readonly mayDrop: boolean }

/** The photos beside an answer, each with a way to take it away. */
export function AnswerPhotos({ photos, question, mayDrop }: AnswerPhotosProps) {
  if (photos.length === 0) return null;
  return (
    <ul className="photos">
      {photos.map((photo, index) => (
        <li key={photo.id}>
          <a href={photo.address}><Image unoptimized src={photo.address} alt={`Photo ${index + 1} to “${question}”`} width={88} height={66} /></a>
          <span className="small muted">{photo.by}</span>
          {mayDrop ? <FormSubmit kind="plain" size="small" name={DROP_FIELD} value={photo.id}>Take it away<span className="vh">: photo {index + 1} to {question}</span></FormSubmit> : null}
        </li>
      ))}
    </ul>
  );
}

import Image from 'next/image';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { FormPhotos } from '@/app/_components/form/form-photos';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { type DateStyle, momentWords } from '@/lib/wording/dates';
import { addPhotosAction, removePhotoAction } from '../actions';

interface PhotosPartProps { readonly incident: IncidentRecord; readonly style: DateStyle; readonly mayAdd: boolean; readonly mayRemove: boolean }

/** Photos of damage. Of one that was taken away only that it was there is left. */
export function PhotosPart({ incident: { id, number, photos }, style, mayAdd, mayRemove }: PhotosPartProps) {
  if (photos.length === 0 && !mayAdd) return null;
  return (
    <Section id="photos" title="Photos">
      {photos.length === 0 ? <p>None.</p> : (
        <ul className="photos">
          {photos.map(({ id: photoId, byName, at, removedAt, widthPx, heightPx }, index) => (
            <li key={photoId}>
              {/* For this school's eyes alone: Next's image service would keep a copy of it. */}
              {removedAt === null ? <a href={`/incidents/${id}/photos/${photoId}`}><Image unoptimized src={`/incidents/${id}/photos/${photoId}`} width={widthPx} height={heightPx} alt={`Photo ${index + 1} of incident ${number}`} /></a> : <p>Taken away, {momentWords(removedAt, style)}</p>}
              <p className="small muted">Added by {byName}, {momentWords(at, style)}</p>
              {removedAt === null && mayRemove ? <RemoveForm incidentId={id} photoId={photoId} number={index + 1} /> : null}
            </li>
          ))}
        </ul>
      )}
      {mayAdd ? <AddForm incidentId={id} /> : null}
    </Section>
  );
}

function AddForm({ incidentId }: { readonly incidentId: string }) {
  return (
    <ActionForm action={addPhotosAction} id="add-photos" faultsTitle="Not added yet. Look at this again">
      <FormHidden name="incidentId" value={incidentId} />
      <FormPhotos name="photos" label="Add photos" hint="Damage, not people; no faces. Where and when a photo was taken is left out of it." />
      <p className="row"><FormSubmit kind="outline">Add them</FormSubmit></p>
    </ActionForm>
  );
}

function RemoveForm({ incidentId, photoId, number }: { readonly incidentId: string; readonly photoId: string; readonly number: number }) {
  return (
    <Disclosure summary={`Take photo ${number} away`}>
      <ActionForm action={removePhotoAction} id={`remove-${photoId}`}>
        <FormHidden name="incidentId" value={incidentId} />
        <FormHidden name="photoId" value={photoId} />
        <FormLine name="reason" label="Why" autoComplete="off" />
        <p className="row"><FormSubmit kind="danger">Take it away, for good</FormSubmit></p>
      </ActionForm>
    </Disclosure>
  );
}

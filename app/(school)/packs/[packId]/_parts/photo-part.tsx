import Image from 'next/image';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormFile, FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { PackPhoto } from '@/lib/server/packs/pack-photos';
import { type DateStyle, momentWords } from '@/lib/wording/dates';
import { addPackPhotoAction, removePackPhotoAction } from '../actions';

interface PhotoPartProps { readonly packId: string; readonly label: string; readonly photo: PackPhoto | null; readonly style: DateStyle; readonly mayChange: boolean }

/** How the pack looks, so that nobody takes another one for it. */
export function PhotoPart({ packId, label, photo, style, mayChange }: PhotoPartProps) {
  if (photo === null && !mayChange) return null;
  return (
    <Section id="photo" title="How it looks">
      {photo === null ? null : (
        <div className="photos"><div>
          {/* For this school's eyes alone: Next's image service would keep a copy of it. */}
          <a href={`/packs/${packId}/photos/${photo.id}`}><Image unoptimized src={`/packs/${packId}/photos/${photo.id}`} width={photo.widthPx} height={photo.heightPx} alt={`Pack ${label}`} /></a>
          <p className="small muted">By {photo.byName}, {momentWords(photo.at, style)}</p>
        </div></div>
      )}
      {mayChange ? (
        <Disclosure summary={photo === null ? 'Add a photo' : 'Another photo'}>
          <ActionForm action={addPackPhotoAction} id="pack-photo" faultsTitle="Not kept yet. Look at this again">
            <FormHidden name="packId" value={packId} />
            <FormFile name="photo" label="Photo" accept="image/jpeg,image/png,image/webp" hint="Only of a pack that is cool, quiet and without smell. No faces. Where and when it was taken is left out." />
            <p className="row"><FormSubmit kind="outline">Keep the photo</FormSubmit></p>
          </ActionForm>
          {photo === null ? null : <ActionForm action={removePackPhotoAction} id="no-photo"><FormHidden name="packId" value={packId} /><p className="row"><FormSubmit kind="plain">Take the photo away, for good</FormSubmit></p></ActionForm>}
        </Disclosure>
      ) : null}
    </Section>
  );
}

'use client';

import { type ReactNode, useState } from 'react';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden } from '@/app/_components/form/form-fields';
import { ScanLabel } from '@/app/_components/packs/scan-label';
import { FRESH_FORM } from '@/lib/forms/form-state';
import { addPackAction, savePacksAction } from '../actions';

const NO_ANSWER = 'No answer came, so nobody knows whether it was added. Look whether the network is there, then read it again.';

interface PacksFormProps { readonly eventId: string; readonly revision: number; readonly children: ReactNode }

/** The form of the packs, over it the camera. What is ticked by hand stays as it is while labels are read. */
export function PacksForm({ eventId, revision: atFirst, children }: PacksFormProps) {
  const [revision, setRevision] = useState(atFirst);
  const add = async (path: string): Promise<string> => {
    const form = new FormData();
    form.set('eventId', eventId);
    form.set('label', path);
    const state = await addPackAction(FRESH_FORM, form).catch(() => null);
    if (state === null) return NO_ANSWER;
    const { data, done, faults } = state;
    if (data === undefined) return faults.map(({ message }) => message).join(' ');
    tick(path.slice('/packs/'.length));
    // Only when nobody else wrote in between: else the form is told so when it is saved.
    setRevision((seen) => (data.revision === seen + 1 ? data.revision : seen));
    return done ?? '';
  };
  return (
    <>
      <ScanLabel name="Add packs with the camera" otherwise="Or tick the packs, or type their labels below." onPack={add} />
      <ActionForm action={savePacksAction} id="packs" faultsTitle="Not saved yet">
        <FormHidden name="eventId" value={eventId} />
        <FormHidden name="revision" value={String(revision)} />
        {children}
      </ActionForm>
    </>
  );
}

/** The box of a pack that was added; a list that a filter made shorter may not have it, and then leaves the pack alone. */
function tick(packId: string): void {
  for (const box of document.querySelectorAll<HTMLInputElement>('#packs input[name=packs]')) if (box.value === packId) box.checked = true;
}

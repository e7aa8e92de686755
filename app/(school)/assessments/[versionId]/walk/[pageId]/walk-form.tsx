import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { FormQuestion } from '@/app/_components/questions/form-question';
import { ButtonLink } from '@/app/_components/ui/button';
import type { WalkPageView } from '@/lib/server/assessments/walk-page';
import { savePageAction } from './actions';

interface WalkFormProps { readonly versionId: string; readonly view: WalkPageView; readonly isClosed: boolean }

/** The questions of a page in one form; sent whole, with the revision of each answer that was seen. */
export function WalkForm({ versionId, view: { page, before, asked }, isClosed }: WalkFormProps) {
  const back = before === null ? `/assessments/${versionId}` : `/assessments/${versionId}/walk/${before.id}`;
  return (
    <div className="walk">
      <ActionForm action={savePageAction} id="walk" faultsTitle="Nothing of this page is saved yet. Look at this again">
        {/* The return key presses the first button of a form, wherever others stand. */}
        <button type="submit" name="then" value="on" className="vh" tabIndex={-1} aria-hidden="true" disabled={isClosed}>Save and go on</button>
        <FormHidden name="versionId" value={versionId} />
        <FormHidden name="pageId" value={page.id} />
        <ol className="questions">{asked.map((one) => <FormQuestion key={one.question.id} asked={isClosed ? { ...one, register: null } : one} noteLabel="Note for the officer" withPhotos={!isClosed} />)}</ol>
        <div className="actions stick">
          <ButtonLink href={back}>Back</ButtonLink>
          {isClosed ? null : <><FormSubmit name="then" value="on">Save and go on</FormSubmit><FormSubmit kind="plain" name="then" value="stop">Save and stop</FormSubmit></>}
        </div>
      </ActionForm>
    </div>
  );
}

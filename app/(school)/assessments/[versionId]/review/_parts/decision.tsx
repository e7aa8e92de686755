import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { Section } from '@/app/_components/ui/section';
import type { ReviewView } from '@/lib/server/signing/review-view';
import { returnAction } from '../actions';
import { AcceptStops } from './accept-stops';

/** What the officer decides: stop conditions first, then returning it or signing it. */
export function Decision({ review }: { readonly review: ReviewView }) {
  const { view: { version, may, words } } = review;
  if (!may.judge) return null;
  return (
    <>
      <AcceptStops view={review.view} />
      <Section id="decision" title="Your decision">
        {may.sign ? <p className="row"><ButtonLink kind="main" href={`/assessments/${version.id}/sign`}>Read the paper and sign</ButtonLink></p> : <p>{words.next}</p>}
        <ActionForm action={returnAction} id="return" faultsTitle="Not returned yet">
          <FormHidden name="versionId" value={version.id} />
          <FormText name="comment" label="Return it with this" hint={`What is to be changed. ${version.preparedByName} sees it with your comments above; the signed paper becomes void.`} rows={4} />
          <p className="row"><FormSubmit kind="outline">Return it to {version.preparedByName}</FormSubmit></p>
        </ActionForm>
      </Section>
    </>
  );
}

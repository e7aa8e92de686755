import { ButtonLink } from '@/app/_components/ui/button';
import { Notice } from '@/app/_components/ui/notice';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import type { ResultView } from '@/lib/server/signing/result-view';
import { settleReviewAction } from '../../suspend/actions';

/** Where it stands, who does what next, and what this person can do about it. */
export function StandingPart({ view }: { readonly view: ResultView }) {
  const { words, standing, may } = view;
  return (
    <div id="standing" className="standing">
      <Notice kind={words.kind} title={words.title} level={2}>
        <p>{words.next}</p>
        <StandingLinks view={view} />
      </Notice>
      {!may.settleReview ? null : standing.reviewRequests.map((request) => (
        <Disclosure key={request.id} summary={`Settle the review asked by ${request.byName}`}>
          <ActionForm action={settleReviewAction} id={`settle-${request.id}`} faultsTitle="Not settled yet">
            <FormHidden name="versionId" value={view.version.id} />
            <FormHidden name="requestId" value={request.id} />
            <FormText name="how" label="What you looked at, and what came of it" hint={request.reason} rows={3} />
            <p className="row"><FormSubmit>Settle it</FormSubmit></p>
          </ActionForm>
        </Disclosure>
      ))}
    </div>
  );
}

function StandingLinks({ view: { version, standing, may } }: { readonly view: ResultView }) {
  const here = `/assessments/${version.id}`;
  const hasPaper = standing.papers.length > 0;
  return (
    <p className="row">
      {may.handOver ? <ButtonLink kind="main" href={`${here}/hand-over`}>Hand it over</ButtonLink> : null}
      {may.signAgain ? <ButtonLink kind="main" href={`${here}/hand-over`}>Read the changed paper and sign again</ButtonLink> : null}
      {may.judge ? <ButtonLink kind={may.sign ? 'outline' : 'main'} href={`${here}/review`}>Check the answers</ButtonLink> : null}
      {may.sign ? <ButtonLink kind="main" href={`${here}/sign`}>Read the paper and sign</ButtonLink> : null}
      {may.judge ? null : <ButtonLink href={`${here}/review`}>Answers and comments</ButtonLink>}
      {hasPaper ? <ButtonLink href={`${here}/paper`}>The paper</ButtonLink> : null}
      {may.beginNext ? <ButtonLink href="/assessments/new#new-version">Begin the next version</ButtonLink> : null}
      {standing.next === null ? null : <ButtonLink href={`/assessments/${standing.next.id}`}>Version {standing.next.number} is being prepared</ButtonLink>}
      {standing.supersededBy === null ? null : <ButtonLink href={`/assessments/${standing.supersededBy.id}/result`}>See version {standing.supersededBy.number}</ButtonLink>}
      {may.suspend ? <ButtonLink kind="plain" href={`${here}/suspend`}>Suspend it</ButtonLink> : null}
      {may.lift ? <ButtonLink kind="now" href={`${here}/suspend`}>Lift the suspension</ButtonLink> : null}
    </p>
  );
}

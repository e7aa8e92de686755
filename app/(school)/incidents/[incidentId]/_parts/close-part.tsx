import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSelect, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Notice } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import { openEnds } from '@/lib/incidents/close-incident';
import { type IncidentRecord, standingOf } from '@/lib/incidents/incident';
import { likelyRisk } from '@/lib/incidents/likely-risk';
import { riskOf } from '@/lib/incidents/standing';
import { chooseRiskAction, closeAction, reopenAction } from '../actions';

interface ClosePartProps {
  readonly incident: IncidentRecord;
  readonly risks: readonly { readonly id: string; readonly title: string }[];
  readonly mayFollowUp: boolean;
  readonly mayClose: boolean;
}

/** The review: which risk it counts for, what is still open, and the end of it. */
export function ClosePart({ incident, risks, mayFollowUp, mayClose }: ClosePartProps) {
  if (!mayFollowUp) return null;
  if (incident.state === 'closed') return <Section id="close" title="Closed"><p>{incident.closedNote}</p>{mayClose ? <ReopenForm incidentId={incident.id} /> : null}</Section>;
  const open = openEnds(standingOf(incident));
  return (
    <Section id="close" title="Review and closing">
      <RiskForm incident={incident} risks={risks} />
      {open.length > 0
        ? <Notice level={3} title="Before it can be closed"><ul>{open.map((words) => <li key={words}>{words}</li>)}</ul></Notice>
        : <Notice level={3} kind="done" title="Nothing is left open."><p>{mayClose ? 'You can close it.' : 'The safety officer can close it.'}</p></Notice>}
      {mayClose && open.length === 0 ? (
        <ActionForm action={closeAction} id="close-form" faultsTitle="Not closed yet">
          <FormHidden name="incidentId" value={incident.id} />
          <FormText name="note" label="What was learned" rows={2} />
          <p className="row"><FormSubmit>Close incident {incident.number}</FormSubmit></p>
        </ActionForm>
      ) : null}
    </Section>
  );
}

function RiskForm({ incident: { id, facts, followUps }, risks }: Pick<ClosePartProps, 'incident' | 'risks'>) {
  const likely = risks.find((risk) => risk.id === likelyRisk(facts));
  const hint = likely === undefined ? 'It counts in the school’s own record for the next assessment.' : `By what was going on it looks like “${likely.title}”. It counts in the school’s own record for the next assessment.`;
  return (
    <ActionForm action={chooseRiskAction} id="risk-form" faultsTitle="Not kept yet">
      <FormHidden name="incidentId" value={id} />
      <FormSelect name="risk" label="Which risk of the assessment was it?" hint={hint} value={riskOf(followUps) ?? ''} options={[{ value: '', label: 'Choose' }, ...risks.map((risk) => ({ value: risk.id, label: risk.title })), { value: 'none', label: 'None of them: it does not count' }]} />
      <p className="row"><FormSubmit kind="outline">Keep the risk</FormSubmit></p>
    </ActionForm>
  );
}

function ReopenForm({ incidentId }: { readonly incidentId: string }) {
  return (
    <ActionForm action={reopenAction} id="reopen-form" faultsTitle="Not opened yet">
      <FormHidden name="incidentId" value={incidentId} />
      <FormLine name="reason" label="Why it is opened again" autoComplete="off" />
      <p className="row"><FormSubmit kind="outline">Open it again</FormSubmit></p>
    </ActionForm>
  );
}

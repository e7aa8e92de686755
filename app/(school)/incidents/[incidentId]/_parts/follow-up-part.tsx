import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSelect, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { ADDED_KINDS } from '@/lib/incidents/change-input';
import { FOLLOW_UP_TITLES } from '@/lib/incidents/follow-up-titles';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { type DateStyle, momentWords } from '@/lib/wording/dates';
import { followUpAction } from '../actions';

interface FollowUpPartProps { readonly incident: IncidentRecord; readonly style: DateStyle; readonly mayAdd: boolean; /** what a risk is called */ readonly riskTitle: (risk: string) => string }

/** What was found and done afterwards, in its order. Nothing of it is written over. */
export function FollowUpPart({ incident: { id, followUps, corrections }, style, mayAdd, riskTitle }: FollowUpPartProps) {
  const persons = corrections.filter(({ field }) => field === 'persons');
  return (
    <Section id="follow-up" title="Afterwards">
      {followUps.length === 0 && persons.length === 0 ? <p>Nothing yet.</p> : (
        <ol className="rows">
          {persons.map(({ number, reason, byName, at }) => <li key={`people ${number}`}><Entry title="People added" text={reason} byName={byName} at={momentWords(at, style)} /></li>)}
          {followUps.map(({ kind, text, byName, at }, index) => <li key={index}><Entry title={FOLLOW_UP_TITLES[kind]} text={kind === 'risk' ? riskTitle(text) : text} byName={byName} at={momentWords(at, style)} /></li>)}
        </ol>
      )}
      {mayAdd ? (
        <ActionForm action={followUpAction} id="add-follow-up" faultsTitle="Not added yet. Look at this again">
          <FormHidden name="incidentId" value={id} />
          <FormSelect name="kind" label="Add" value="cause" options={ADDED_KINDS.map((kind) => ({ value: kind, label: FOLLOW_UP_TITLES[kind] }))} />
          <FormText name="text" label="In words" hint="Roles and initials only, no names. No blame: what led to it." rows={3} />
          <p className="row"><FormSubmit kind="outline">Add it</FormSubmit></p>
        </ActionForm>
      ) : null}
    </Section>
  );
}

function Entry({ title, text, byName, at }: { readonly title: string; readonly text: string; readonly byName: string; readonly at: string }) {
  return <><p><b>{title}</b>: {text}</p><p className="small muted">{byName}, {at}</p></>;
}

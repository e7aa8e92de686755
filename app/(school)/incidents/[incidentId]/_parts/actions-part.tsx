import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { calendarDayWords, type DateStyle } from '@/lib/wording/dates';
import { correctiveActionAction } from '../actions';

interface ActionsPartProps { readonly incident: IncidentRecord; readonly style: DateStyle; readonly today: string; readonly mayAdd: boolean }

/** What is changed so that it does not come again: by whom, by when. */
export function ActionsPart({ incident: { id, actions }, style, today, mayAdd }: ActionsPartProps) {
  return (
    <Section id="actions" title="Corrective actions">
      {actions.length === 0 ? <p>None yet.</p> : (
        <Table
      stacked
          caption="What is to be done, by whom, by when"
          rows={actions}
          rowKey={(action) => action.id}
          presses={({ state, dueOn }) => state === 'open' && dueOn < today}
          columns={[
            { head: 'To do', cell: ({ title }) => title },
            { head: 'Who', cell: ({ ownerName }) => ownerName },
            { head: 'Due', cell: ({ dueOn, state }) => `${calendarDayWords(dueOn, style)}${state === 'open' && dueOn < today ? ', overdue' : ''}` },
            { head: 'State', cell: ({ state }) => state },
          ]}
        />
      )}
      {mayAdd ? (
        <ActionForm action={correctiveActionAction} id="add-action" faultsTitle="Not added yet. Look at this again">
          <FormHidden name="incidentId" value={id} />
          <FormLine name="title" label="What is to be done" autoComplete="off" />
          <FormLine name="ownerName" label="Who does it" autoComplete="off" />
          <FormLine name="dueOn" label="By when" type="date" />
          <p className="row"><FormSubmit kind="outline">Add the action</FormSubmit></p>
        </ActionForm>
      ) : null}
    </Section>
  );
}

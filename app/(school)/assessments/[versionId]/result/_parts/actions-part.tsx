import { ActionTable } from '@/app/_components/actions/action-table';
import { ButtonLink } from '@/app/_components/ui/button';
import { Section } from '@/app/_components/ui/section';
import { isOverdue } from '@/lib/assessments/actions';
import type { ResultView } from '@/lib/server/signing/result-view';

/** What was agreed: by whom, by when, and what became of it. Open ones with a control count as planned above. */
export function ActionsPart({ view: { version, actions, today, school, may } }: { readonly view: ResultView }) {
  const open = actions.filter(({ state }) => state === 'open').length;
  const overdue = actions.filter((action) => isOverdue(action, today)).length;
  return (
    <Section id="actions" title="Actions" aside={overdue > 0 ? `${open} open, ${overdue} overdue` : `${open} open`}>
      <p className="small muted">An open action that puts a control in place counts as planned: “once the planned actions are done” above means these. It settles nothing before it is done.</p>
      {actions.length === 0 ? <p className="after">None is agreed. Make one out of any stop condition or suggestion above, or write your own.</p> : <ActionTable actions={actions} today={today} style={school} />}
      {may.addAction ? <p className="row after"><ButtonLink href={`/assessments/${version.id}/actions/new`}>Write your own</ButtonLink></p> : null}
    </Section>
  );
}

import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { dayAfter } from '@/lib/assessments/acceptance';
import type { Acceptable } from '@/lib/content/model';
import type { ResultView } from '@/lib/server/signing/result-view';
import { acceptanceWords } from '@/lib/wording/acceptance';
import { acceptStopAction } from '../actions';

/** Stop conditions that hold: which the officer may let stand, in writing and for a time, and which nobody may. */
export function AcceptStops({ view }: { readonly view: ResultView }) {
  const { scored: { result, content }, openStops } = view;
  const open = result.stops.filter(({ id }) => openStops.includes(id));
  if (open.length === 0) return null;
  return (
    <Section id="accept" title="Open stop conditions" aside={String(open.length)}>
      <p className="small muted">An acceptance stands on the first page of the paper with its reason, and ends by itself. After it {view.version.preparedByName} signs the changed paper once more.</p>
      <ul className="stops after">
        {open.map((stop) => {
          const acceptable = content.stops.find(({ id }) => id === stop.id)?.acceptable;
          const words = acceptanceWords(acceptable);
          return (
            <li key={stop.id} id={`accept-${stop.id}`}>
              <h3>{stop.title}</h3>
              <p>{stop.why}</p>
              {words === null ? null : <p className="small"><b>{words.lead}</b> {words.words}</p>}
              {acceptable === undefined || acceptable.kind === 'never' ? null : <AcceptForm view={view} stop={stop} acceptable={acceptable} />}
            </li>
          );
        })}
      </ul>
    </Section>
  );
}

interface AcceptFormProps { readonly view: ResultView; readonly stop: { readonly id: string; readonly title: string }; readonly acceptable: Exclude<Acceptable, { readonly kind: 'never' }> }

function AcceptForm({ view: { version, today }, stop, acceptable }: AcceptFormProps) {
  const untilDays = acceptable.kind === 'until' ? acceptable.days : 365;
  return (
    <Disclosure summary={`Accept in writing: ${stop.title}`}>
      <ActionForm action={acceptStopAction} id={`accept-form-${stop.id}`} faultsTitle="Not accepted yet">
        <FormHidden name="versionId" value={version.id} />
        <FormHidden name="stopId" value={stop.id} />
        <FormText name="reason" label="Why it can be accepted" hint="Stands on the first page. At most 300 characters." rows={2} />
        <FormText name="replacement" label="What is done instead" hint={acceptable.kind === 'until' ? acceptable.replacedBy : 'May stay empty when the paper says it'} rows={2} />
        {acceptable.kind === 'with-paper' ? <FormLine name="paper" label="The authority’s paper" hint={`${acceptable.paper}: what it is, its date, where it is kept`} maxLength={160} /> : null}
        <FormLine name="endsOn" label="Last day on which it holds" type="date" value={dayAfter(today, Math.min(untilDays, 30))} hint={`At most ${untilDays} days from today`} />
        <p className="row"><FormSubmit kind="outline">Accept it</FormSubmit></p>
      </ActionForm>
    </Disclosure>
  );
}

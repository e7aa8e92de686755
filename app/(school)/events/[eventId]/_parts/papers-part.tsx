import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import type { EventView } from '@/lib/server/events/event-view';
import { EVENT_PAPER_KINDS, EVENT_PAPERS, type EventPaperKind } from '@/lib/server/events/paper-kinds';
import { dayWords } from '@/lib/wording/dates';
import { makePaperAction } from '../actions';

/** The papers of the event, each to be read here or saved as a file. */
export function PapersPart({ view }: { readonly view: EventView }) {
  return (
    <Section id="papers" title="Papers">
      <ul className="rows">{EVENT_PAPER_KINDS.map((kind) => <li key={kind}><PaperRow kind={kind} view={view} /></li>)}</ul>
    </Section>
  );
}

function PaperRow({ kind, view: { event, papers, school } }: { readonly kind: EventPaperKind; readonly view: EventView }) {
  const { title, hint } = EVENT_PAPERS[kind];
  const made = papers.filter((paper) => paper.kind === kind);
  const read = `/events/${event.id}/papers/${kind}`;
  return (
    <>
      <h3>{title}</h3>
      <p className="small muted">{hint}. <Link href={read} prefetch={false}>Read it here<span className="vh">: {title}</span></Link></p>
      {made.length === 0 ? null : (
        <ul className="small">
          {made.map(({ number, state, createdAt, replacedAt, withdrawnAt, signatures }) => (
            <li key={number}><a href={`${read}/file?number=${number}`}>{number}</a>, {dayWords(createdAt, school)}: {becomeOf({ state, replacedAt, withdrawnAt })}{signatures.length === 0 ? '' : `, signed by ${signatures.map(({ signerName }) => signerName).join(' and ')}`}</li>
          ))}
        </ul>
      )}
      {kind === 'event' ? null : (
        <ActionForm action={makePaperAction} id={`make-${kind}`} faultsTitle="Not made">
          <FormHidden name="eventId" value={event.id} />
          <FormHidden name="kind" value={kind} />
          <p className="row"><FormSubmit kind="outline" size="small">Make the file (PDF)<span className="vh">: {title}</span></FormSubmit></p>
        </ActionForm>
      )}
    </>
  );
}

function becomeOf({ state, replacedAt, withdrawnAt }: { readonly state: string; readonly replacedAt: Date | null; readonly withdrawnAt: Date | null }): string {
  if (withdrawnAt !== null) return 'withdrawn';
  if (replacedAt !== null) return 'replaced';
  return state === 'part-signed' ? 'waits for the officer' : state === 'signed' ? 'signed by both' : 'as it was made';
}

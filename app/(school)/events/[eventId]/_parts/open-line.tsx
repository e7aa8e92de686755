import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import type { JudgedLine } from '@/lib/events/check/check-event';
import { acceptLineAction } from '../actions';

interface OpenLineProps { readonly line: JudgedLine; readonly eventId: string; readonly mayMend: boolean; readonly mayAccept: boolean }

/** A line that does not pass: what was found, how to mend it, and whether the officer may let it stand. */
export function OpenLine({ line, eventId, mayMend, mayAccept }: OpenLineProps) {
  const { id, state, words, mend, link, mayBeAccepted } = line;
  const isOwn = link?.startsWith('/events/') === true;
  return (
    <li id={`line-${id}`} className={state === 'failing' ? 'fails' : 'open'}>
      <p><span className="mark-word">{state === 'failing' ? 'Fails' : 'Not known'}</span> <b>{words}</b></p>
      <p className="small">{mend}{link === null || (isOwn && !mayMend) ? null : <> <Link href={link} prefetch={false} className="nowrap">Mend it<span className="vh">: {words}</span></Link></>}</p>
      {mayAccept && mayBeAccepted ? (
        <Disclosure summary="Let it stand, in writing">
          <ActionForm action={acceptLineAction} id={`accept-${id}`} faultsTitle="Not accepted">
            <FormHidden name="eventId" value={eventId} />
            <FormHidden name="lineId" value={id} />
            <FormHidden name="words" value={words} />
            <FormText name="reason" label="Why it can stand" hint="Printed on the file with your name" rows={3} />
            <p className="row"><FormSubmit kind="outline">Let it stand<span className="vh">: {words}</span></FormSubmit></p>
          </ActionForm>
        </Disclosure>
      ) : null}
      {mayAccept && !mayBeAccepted ? <p className="small muted">This one cannot be accepted.</p> : null}
    </li>
  );
}

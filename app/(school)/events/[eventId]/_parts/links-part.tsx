import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSelect, FormSubmit } from '@/app/_components/form/form-fields';
import { CopyLink } from '@/app/_components/ui/copy-link';
import { Section } from '@/app/_components/ui/section';
import { LINK_DAYS, type LinkPurpose } from '@/lib/events/links';
import type { EventView } from '@/lib/server/events/event-view';
import type { SharedLink } from '@/lib/server/events/share';
import { shareAction, takeBackAction } from '../actions';

/** Links for the venue, which has no account: to describe itself before, to see its file afterwards. */
export function LinksPart({ view: { event, may, shared } }: { readonly view: EventView }) {
  if (!may.describe && !may.share && shared.length === 0) return null;
  return (
    <Section id="links" title="Links for the venue" aside="Without an account">
      {may.describe ? <MakeLink eventId={event.id} purpose="describe-venue" days="14" what="The venue’s own staff describe it: alarm, ways out, rooms, what they provide. They see the name of the school and of the event, and what is known of the venue; nothing else." button="Make a link to describe the venue" /> : null}
      {may.share ? <MakeLink eventId={event.id} purpose="see-document" days="30" what="The venue sees the signed file and whether it still holds; nothing else. Whoever has the link sees it." button="Make a link to the file" /> : null}
      {shared.length === 0 ? null : <ul className="rows links">{shared.map((link) => <li key={link.id}><LinkRow link={link} eventId={event.id} /></li>)}</ul>}
    </Section>
  );
}

function MakeLink({ eventId, purpose, days, what, button }: { readonly eventId: string; readonly purpose: LinkPurpose; readonly days: string; readonly what: string; readonly button: string }) {
  return (
    <ActionForm action={shareAction} id={`share-${purpose}`} faultsTitle="No link was made">
      <p>{what}</p>
      <FormHidden name="eventId" value={eventId} />
      <FormHidden name="purpose" value={purpose} />
      <FormLine name="forWhom" label="Who is it for?" hint="Name and post" maxLength={100} autoComplete="off" />
      <FormSelect name="days" label="The link works for" value={days} options={LINK_DAYS.map((value) => ({ value, label: `${value} days` }))} />
      <p className="row"><FormSubmit kind="outline">{button}</FormSubmit></p>
    </ActionForm>
  );
}

function LinkRow({ link, eventId }: { readonly link: SharedLink; readonly eventId: string }) {
  return (
    <>
      <h3>{link.forWhom}</h3>
      <p className="small muted">{link.purpose === 'see-document' ? `To the file ${link.documentNumber ?? ''}` : 'To describe the venue'}, sent by {link.byName}; {link.ended ?? `works until ${link.until}`}. {link.opened}.{link.purpose === 'describe-venue' ? ` ${link.answered === null ? 'Not answered yet' : `Answered: ${link.answered}`}.` : ''}</p>
      {link.address === null ? null : <CopyLink label={`Link for ${link.forWhom}`} address={link.address} />}
      {link.mayTakeBack && link.ended === null ? (
        <ActionForm action={takeBackAction} id={`take-${link.id}`}>
          <FormHidden name="eventId" value={eventId} />
          <FormHidden name="linkId" value={link.id} />
          <p className="row"><FormSubmit kind="outline" size="small">Take it back<span className="vh">: the link for {link.forWhom}</span></FormSubmit></p>
        </ActionForm>
      ) : null}
    </>
  );
}

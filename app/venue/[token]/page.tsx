import type { Metadata } from 'next';
import Link from 'next/link';
import { VenueFields } from '@/app/_components/events/venue-fields';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Frame } from '@/app/_components/ui/frame';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { AREA_USES } from '@/lib/places/place';
import { AREA_USE_HINTS, AREA_USE_WORDS } from '@/lib/places/words';
import { countVenueOpened, openVenueLink, type VenuePage as Venue } from '@/lib/server/events/venue-page';
import { describeVenueAction } from './actions';

export const metadata: Metadata = { title: 'About your venue', robots: { index: false, follow: false }, referrer: 'no-referrer' };

/** What the venue's own staff know of it, for somebody without an account: the venue and the day, and nothing else. */
export default async function DescribeVenuePage({ params }: { readonly params: Promise<{ readonly token: string }> }) {
  const { token } = await params;
  const opened = await openVenueLink(token);
  if (!opened.ok) return <Frame><PageHead title="This link does not work" lead={opened.reason} /></Frame>;
  const { page } = opened;
  await countVenueOpened(page);
  const { event, site, school, link, when, until } = page;
  return (
    <Frame margin={<MarginNote title="Who sees it">{`${link.byName} of ${school.schoolName}, who sent you this, and the school’s safety officer. Your name is kept with what you say.`}</MarginNote>}>
      <PageHead title={`About ${site.name}`} lead={`${school.schoolName} comes to you with a drone team and its packs: ${event.title}, ${when}. You know the building. Leave open what you do not know. The link works until ${until}.`} />
      <ActionForm action={describeVenueAction} check={{ of: 'venue-link' }} id="venue" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="token" value={token} />
        <FormHidden name="revision" value={String(event.revision)} />
        <FormHidden name="siteRevision" value={String(site.revision)} />
        <Section id="emergency" title="In an emergency">
          <div className="stack fields">
            <FormLine name="emergencyNumber" label="Number to call when there is a fire" type="tel" value={site.emergencyNumber ?? ''} autoComplete="off" />
            <FormLine name="meetingPlace" label="Where everybody meets outside" value={site.meetingPlace ?? ''} autoComplete="off" />
            <FormLine name="secondMeetingPlace" label="Where they go if smoke drifts there" value={site.secondMeetingPlace ?? ''} autoComplete="off" />
            <FormLine name="keyHolder" label="Caretaker, or who keeps the keys" value={site.keyHolder ?? ''} autoComplete="off" />
            <FormLine name="keyHolderPhone" label="Their telephone on the day" type="tel" value={site.keyHolderPhone ?? ''} autoComplete="off" />
          </div>
        </Section>
        <VenueFields details={event.details} asked={page.asked} charging={event.details.charging === 'yes'} />
        <FormLine name="name" label="Your name and post" value={link.answeredByName ?? ''} autoComplete="name" maxLength={100} />
        <p className="row"><FormSubmit>Save what I know</FormSubmit></p>
      </ActionForm>
      <Areas site={site} token={token} />
    </Frame>
  );
}

function Areas({ site, token }: Pick<Venue, 'site'> & { readonly token: string }) {
  const address = `/venue/${encodeURIComponent(token)}/area`;
  return (
    <Section id="areas" title="Rooms and spots">
      <p>Each on a page of its own: size, air, ways out. Save the page above first.</p>
      <ul className="rows">
        {AREA_USES.filter((use) => use !== 'disposal').map((use) => {
          const areas = site.areas.filter((area) => area.use === use);
          return (
            <li key={use}>
              <h3>{AREA_USE_WORDS[use]}</h3>
              <p className="small muted">{AREA_USE_HINTS[use]}</p>
              {areas.map((area) => <p key={area.id}><Link href={`${address}?area=${area.id}`} prefetch={false}>Change {area.name}</Link></p>)}
              <p><Link href={`${address}?use=${use}`} prefetch={false}>Describe {areas.length === 0 ? 'one' : 'another'}<span className="vh">: {AREA_USE_WORDS[use]}</span></Link></p>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { AREA_USES, type Site } from '@/lib/places/place';
import { AREA_USE_WORDS, SITE_KIND_WORDS } from '@/lib/places/words';
import { requireMay } from '@/lib/server/actor';
import { type CurrentSchool, currentSchool } from '@/lib/server/people/current-school';
import { findSite, placesPutAway } from '@/lib/server/places/read-places';
import { dayWords } from '@/lib/wording/dates';
import { AreaFacts } from '../_parts/area-facts';
import { BringBack } from '../_parts/bring-back';
import { PutAway } from '../_parts/put-away';
import { bringBackAreaAction, putAwaySiteAction } from '../actions';

export const metadata: Metadata = { title: 'Place' };

export default async function SitePage({ params }: { readonly params: Promise<{ readonly siteId: string }> }) {
  const actor = await requireMay('place.read');
  const site = await findSite(actor, (await params).siteId);
  if (site === null) notFound();
  const school = await currentSchool(actor);
  const mayChange = can(actor.role, 'place.change');
  const away = can(actor.role, 'place.archive') ? await placesPutAway(actor, site.id) : [];
  return (
    <Sheet marginLabel="About this place" margin={<MissingAreas site={site} />}>
      <PageHead crumb={<><Link href="/places" prefetch={false}><Icon name="left" />Places</Link><span>{SITE_KIND_WORDS[site.kind]}</span></>} title={site.name} lead={site.address} />
      {mayChange ? <div className="act-row"><ButtonLink kind="main" href={`/places/${site.id}/areas/new`}>Add an area</ButtonLink><ButtonLink href={`/places/${site.id}/edit`}>Change this place</ButtonLink></div> : null}
      {site.areas.length === 0 ? <Empty level={2} title="No area yet"><p>The charging table comes first: an assessment asks for its room.</p></Empty> : null}
      {site.areas.map((area) => (
        <Section key={area.id} id={`area-${area.id}`} title={area.name} aside={mayChange ? <Link href={`/places/${site.id}/areas/${area.id}`} prefetch={false}>Change {area.name}</Link> : AREA_USE_WORDS[area.use]}>
          <AreaFacts area={area} units={school.units} />
        </Section>
      ))}
      <EmergencyFacts site={site} school={school} />
      <BringBack action={bringBackAreaAction} ids={{ siteId: site.id }} field="areaId" places={away.map(({ id, name, archivedAt }) => ({ id, name, when: archivedAt === null ? '' : dayWords(archivedAt, school) }))} />
      {can(actor.role, 'place.archive') ? <PutAway action={putAwaySiteAction} ids={{ siteId: site.id }} what={site.name} /> : null}
    </Sheet>
  );
}

/** What an assessment will ask for and nobody has entered. */
function MissingAreas({ site }: { readonly site: Site }) {
  const missing = AREA_USES.filter((use) => site.areas.every((area) => area.use !== use));
  if (missing.length === 0) return <MarginNote title="Areas">All five uses have an area here.</MarginNote>;
  return <MarginNote title="No area yet for"><ul>{missing.map((use) => <li key={use}>{AREA_USE_WORDS[use]}</li>)}</ul></MarginNote>;
}

function EmergencyFacts({ site, school }: { readonly site: Site; readonly school: CurrentSchool }) {
  const own = site.kind === 'own';
  const facts = [
    ['Number to call when there is a fire', site.emergencyNumber ?? (own ? school.emergencyNumber : null)],
    ['Meeting place', site.meetingPlace ?? (own ? school.meetingPlace : null)],
    ['If smoke drifts there', site.secondMeetingPlace ?? (own ? school.secondMeetingPlace : null)],
    ['Keys', site.keyHolder === null ? null : `${site.keyHolder}${site.keyHolderPhone === null ? '' : `, ${site.keyHolderPhone}`}`],
    ['Notes', site.notes],
  ] as const;
  return (
    <Section id="emergency" title="In an emergency there">
      <dl className="facts">{facts.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value ?? <span className="muted">not given</span>}</dd></div>)}</dl>
    </Section>
  );
}

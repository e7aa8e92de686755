import type { Metadata } from 'next';
import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { Table } from '@/app/_components/ui/table';
import { can } from '@/lib/access/can';
import type { Site } from '@/lib/places/place';
import { AREA_USE_WORDS, SITE_KIND_WORDS } from '@/lib/places/words';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { listOfSites, placesPutAway } from '@/lib/server/places/read-places';
import { dayWords } from '@/lib/wording/dates';
import { bringBackSiteAction } from './actions';
import { BringBack } from './_parts/bring-back';
import { SiteFinder } from './_parts/site-finder';

export const metadata: Metadata = { title: 'Places' };

interface PlacesPageProps { readonly searchParams: Promise<{ readonly find?: string | string[] }> }

export default async function PlacesPage({ searchParams }: PlacesPageProps) {
  const actor = await requireMay('place.read');
  const [find = ''] = [(await searchParams).find ?? ''].flat();
  const [sites, school] = [await listOfSites(actor, find), await currentSchool(actor)];
  const mayChange = can(actor.role, 'place.change');
  const away = can(actor.role, 'place.archive') ? await placesPutAway(actor, null) : [];
  return (
    <Sheet>
      <PageHead crumb={school.schoolName} title={titleOf(sites.length, find)} lead="Where packs are charged, stored and flown: at your school and away." />
      {sites.length === 0 && find === '' ? <NoPlaces mayChange={mayChange} /> : (
        <>
          <p className="row list-tools">
            {mayChange ? <ButtonLink kind="main" href="/places/new">Add a place</ButtonLink> : null}
            <ButtonLink href="/places/export" download="places.csv">Save as CSV</ButtonLink>
          </p>
          <SiteFinder find={find} />
          {sites.length === 0 ? <p>No place is like that. <Link href="/places">Show all</Link></p> : <SiteTable sites={sites} />}
        </>
      )}
      <BringBack action={bringBackSiteAction} field="siteId" places={away.map(({ id, name, archivedAt }) => ({ id, name, when: archivedAt === null ? '' : dayWords(archivedAt, school) }))} />
    </Sheet>
  );
}

function titleOf(count: number, find: string): string {
  if (count === 0) return find === '' ? 'No places yet' : 'No place found';
  return count === 1 ? 'One place' : `${count} places`;
}

function NoPlaces({ mayChange }: { readonly mayChange: boolean }) {
  return (
    <Empty level={2} title="Begin with your own hall">
      <p>A place is a building with its address and meeting point. Then come its areas: the charging table, the cupboard, the arena, the outdoor spot for suspect packs.</p>
      {mayChange ? <ButtonLink kind="main" href="/places/new">Add a place</ButtonLink> : null}
    </Empty>
  );
}

function SiteTable({ sites }: { readonly sites: readonly Site[] }) {
  return (
    <Table
      stacked
      caption="Places of your school"
      columns={[
        { head: 'Place', cell: (site) => <Link href={`/places/${site.id}`} prefetch={false}>{site.name}</Link> },
        { head: 'Whose', cell: (site) => SITE_KIND_WORDS[site.kind] },
        { head: 'Address', cell: (site) => site.address },
        { head: 'Areas', cell: (site) => (site.areas.length === 0 ? 'none yet' : site.areas.map(({ use }) => AREA_USE_WORDS[use]).join(', ')) },
      ]}
      rows={sites}
      rowKey={({ id }) => id}
    />
  );
}

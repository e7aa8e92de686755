import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { AREA_USES } from '@/lib/places/place';
import { AREA_USE_HINTS, AREA_USE_WORDS } from '@/lib/places/words';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { findSite } from '@/lib/server/places/read-places';
import { AreaFieldsForm } from '../../../_parts/area-fields-form';
import { addAreaAction } from '../../../actions';

export const metadata: Metadata = { title: 'Add an area' };

interface NewAreaPageProps {
  readonly params: Promise<{ readonly siteId: string }>;
  readonly searchParams: Promise<{ readonly use?: string | string[] }>;
}

/** First what it is for, since the rest follows from it; then its form. */
export default async function NewAreaPage({ params, searchParams }: NewAreaPageProps) {
  const actor = await requireMay('place.change');
  const site = await findSite(actor, (await params).siteId);
  if (site === null) notFound();
  const [asked] = [(await searchParams).use].flat();
  const use = AREA_USES.find((known) => known === asked);
  const school = await currentSchool(actor);
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/places/${site.id}`} prefetch={false}><Icon name="left" />{site.name}</Link>} title={use === undefined ? 'What is the area for?' : 'Add an area'} />
      {use === undefined ? <UseList siteId={site.id} /> : (
        <ActionForm action={addAreaAction} check={{ of: 'area' }} id="add-area" faultsTitle="Area not added yet. Look at this again">
          <FormHidden name="siteId" value={site.id} />
          <AreaFieldsForm use={use} units={school.units} />
          <p className="row"><FormSubmit>Add the area</FormSubmit></p>
        </ActionForm>
      )}
    </Sheet>
  );
}

function UseList({ siteId }: { readonly siteId: string }) {
  return (
    <ul className="rows">
      {AREA_USES.map((use) => <li key={use}><Link href={`/places/${siteId}/areas/new?use=${use}`} prefetch={false}><b>{AREA_USE_WORDS[use]}</b></Link><span className="muted">{AREA_USE_HINTS[use]}</span></li>)}
    </ul>
  );
}

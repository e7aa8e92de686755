import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { findArea, findSite } from '@/lib/server/places/read-places';
import { AreaFieldsForm } from '../../../_parts/area-fields-form';
import { PutAway } from '../../../_parts/put-away';
import { changeAreaAction, putAwayAreaAction } from '../../../actions';

export const metadata: Metadata = { title: 'Change an area' };

export default async function AreaPage({ params }: { readonly params: Promise<{ readonly siteId: string; readonly areaId: string }> }) {
  const actor = await requireMay('place.change');
  const { siteId, areaId } = await params;
  const [site, area] = [await findSite(actor, siteId), await findArea(actor, areaId)];
  if (site === null || area === null || area.siteId !== site.id || area.archivedAt !== null) notFound();
  const school = await currentSchool(actor);
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/places/${site.id}`} prefetch={false}><Icon name="left" />{site.name}</Link>} title={`Change ${area.name}`} />
      <ActionForm action={changeAreaAction} check={{ of: 'area-change' }} id="change-area" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="siteId" value={site.id} />
        <FormHidden name="areaId" value={area.id} />
        <FormHidden name="revision" value={String(area.revision)} />
        <AreaFieldsForm use={area.use} units={school.units} area={area} />
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
      {can(actor.role, 'place.archive') ? <PutAway action={putAwayAreaAction} ids={{ siteId: site.id, areaId: area.id }} what={area.name} /> : null}
    </Sheet>
  );
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { findSite } from '@/lib/server/places/read-places';
import { SiteFields } from '../../_parts/site-fields';
import { changeSiteAction } from '../../actions';

export const metadata: Metadata = { title: 'Change a place' };

export default async function EditSitePage({ params }: { readonly params: Promise<{ readonly siteId: string }> }) {
  const actor = await requireMay('place.change');
  const site = await findSite(actor, (await params).siteId);
  if (site === null) notFound();
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/places/${site.id}`} prefetch={false}><Icon name="left" />{site.name}</Link>} title={`Change ${site.name}`} lead="Signed papers stay as they were signed." />
      <ActionForm action={changeSiteAction} check={{ of: 'site-change' }} id="change-site" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="siteId" value={site.id} />
        <FormHidden name="revision" value={String(site.revision)} />
        <SiteFields site={site} />
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { SiteFields } from '../_parts/site-fields';
import { addSiteAction } from '../actions';

export const metadata: Metadata = { title: 'Add a place' };

export default async function NewSitePage() {
  await requireMay('place.change');
  return (
    <Sheet>
      <PageHead crumb={<Link href="/places" prefetch={false}><Icon name="left" />Places</Link>} title="Add a place" lead="First the building. Its areas come next." />
      <ActionForm action={addSiteAction} check={{ of: 'site' }} id="add-site" faultsTitle="Place not added yet. Look at this again">
        <SiteFields />
        <p className="row"><FormSubmit>Add the place</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import { requireMay } from '@/lib/server/actor';
import { packLimitsOf } from '@/lib/server/packs/pack-limits';
import { areaChoices } from '@/lib/server/packs/pack-places';
import { PackFields } from '../_parts/pack-fields';
import { addPackAction } from './actions';

export const metadata: Metadata = { title: 'Add a pack' };

export default async function NewPackPage() {
  const actor = await requireMay('pack.add');
  return (
    <Sheet margin={<MarginNote title="Many of one kind?"><p>Add one, then copy it: the labels go on by themselves. For all at once, <Link href="/packs/import" prefetch={false}>read a table</Link>.</p></MarginNote>}>
      <PageHead crumb={<Link href="/packs" prefetch={false}><Icon name="left" />Packs</Link>} title="Add a pack" />
      <ActionForm action={addPackAction} check={{ of: 'pack' }} id="add-pack" faultsTitle="Pack not added yet. Look at this again">
        <PackFields cellTypes={cellTypeFacts(await packLimitsOf(actor))} areas={await areaChoices(actor)} />
        <p className="row"><FormSubmit>Add the pack</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}

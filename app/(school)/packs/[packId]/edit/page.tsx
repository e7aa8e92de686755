import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import { requireMay } from '@/lib/server/actor';
import { packLimitsOf } from '@/lib/server/packs/pack-limits';
import { areaChoices } from '@/lib/server/packs/pack-places';
import { findPack } from '@/lib/server/packs/read-packs';
import { PackFields } from '../../_parts/pack-fields';
import { changePackAction } from '../actions';

export const metadata: Metadata = { title: 'Change a pack' };

export default async function EditPackPage({ params }: { readonly params: Promise<{ readonly packId: string }> }) {
  const actor = await requireMay('pack.change');
  const history = await findPack(actor, (await params).packId);
  if (history === null) notFound();
  const { pack } = history;
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/packs/${pack.id}`} prefetch={false}><Icon name="left" />{pack.label}</Link>} title={`Change ${pack.label}`} lead="What stood here before stays in the log." />
      <ActionForm action={changePackAction} check={{ of: 'pack-change' }} id="change-pack" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="packId" value={pack.id} />
        <FormHidden name="revision" value={String(pack.revision)} />
        <PackFields pack={pack} cellTypes={cellTypeFacts(await packLimitsOf(actor))} areas={await areaChoices(actor)} />
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { checkSheet } from '@/lib/packs/checks/check-sheet';
import { isHere } from '@/lib/packs/states/pack-states';
import { requireMay } from '@/lib/server/actor';
import { packLimitsOf, temperatureUnitOf } from '@/lib/server/packs/pack-limits';
import { findPack } from '@/lib/server/packs/read-packs';
import { currentSchool } from '@/lib/server/people/current-school';
import { checkPackAction } from '../actions';
import { CheckSteps } from './check-steps';
import { RegisterSays } from './register-says';

export const metadata: Metadata = { title: 'Check a pack' };

export default async function CheckPage({ params }: { readonly params: Promise<{ readonly packId: string }> }) {
  const actor = await requireMay('pack.check');
  const history = await findPack(actor, (await params).packId);
  if (history === null || !isHere(history.pack.state)) notFound();
  const { pack } = history;
  const [school, limits] = await Promise.all([currentSchool(actor), packLimitsOf(actor)]);
  return (
    <Sheet margin={<MarginNote title="Why in this order">What can be seen, heard and smelled from where you stand comes first, so that nobody handles a pack that heats itself. The meter comes last, or not at all.</MarginNote>}>
      <PageHead crumb={<Link href={`/packs/${pack.id}`} prefetch={false}><Icon name="left" />{pack.label}</Link>} title={`Check ${pack.label}`} />
      {pack.state === 'isolated' ? <Notice title="It is isolated" level={2}>A check here serves a release by the safety officer. In any doubt, leave it.</Notice> : null}
      <ActionForm action={checkPackAction} id="check-pack" faultsTitle="Look at this again">
        <FormHidden name="packId" value={pack.id} />
        <CheckSteps sheet={checkSheet(limits, pack)} unit={temperatureUnitOf(school)} register={<RegisterSays history={history} limits={limits} />} />
      </ActionForm>
    </Sheet>
  );
}

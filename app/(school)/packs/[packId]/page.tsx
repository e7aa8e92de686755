import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { PackStateShapes } from '@/app/_components/packs/pack-state-mark';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { cellsInWords, type Pack } from '@/lib/packs/pack';
import { mustBeIsolatedNow } from '@/lib/packs/pack-history';
import { isHere } from '@/lib/packs/states/pack-states';
import { requireMay } from '@/lib/server/actor';
import { packLimitsOf, temperatureUnitOf } from '@/lib/server/packs/pack-limits';
import { besidePack } from '@/lib/server/packs/pack-photos';
import { findPack } from '@/lib/server/packs/read-packs';
import { currentSchool } from '@/lib/server/people/current-school';
import { CellsPart } from './_parts/cells-part';
import { CopyPart } from './_parts/copy-part';
import { LifePart } from './_parts/life-part';
import { LogPart } from './_parts/log-part';
import { PackNotes } from './_parts/pack-notes';
import { PhotoPart } from './_parts/photo-part';
import { StatePart } from './_parts/state-part';
import { VerdictPart } from './_parts/verdict-part';
import { WherePart } from './_parts/where-part';

export const metadata: Metadata = { title: 'Pack' };

export default async function PackPage({ params }: { readonly params: Promise<{ readonly packId: string }> }) {
  const actor = await requireMay('pack.read');
  const history = await findPack(actor, (await params).packId);
  if (history === null) notFound();
  const [school, limits, { photo, lastCharge }] = await Promise.all([currentSchool(actor), packLimitsOf(actor), besidePack(actor, history.pack.id)]);
  const unit = temperatureUnitOf(school);
  const { pack, checks, changes } = history;
  const isLocked = mustBeIsolatedNow(history);
  return (
    <Sheet marginLabel="About this pack" margin={<PackNotes history={history} lastCharge={lastCharge} limits={limits} style={school} />}>
      <PackStateShapes />
      <PageHead crumb={<><Link href="/packs" prefetch={false}><Icon name="left" />Packs</Link><span>{labelWords(pack)}</span></>} title={pack.label} />
      <VerdictPart history={history} limits={limits} now={new Date()} unit={unit} style={school} officerPhone={school.officerPhone} />
      {pack.state === 'isolated' ? <WherePart history={history} style={school} /> : null}
      {isHere(pack.state) && !isLocked ? <PackActions pack={pack} role={actor.role} /> : null}
      {isLocked ? null : <PhotoPart packId={pack.id} label={pack.label} photo={photo} style={school} mayChange={can(actor.role, 'pack.change') && isHere(pack.state)} />}
      <CellsPart checks={checks} cellType={pack.cellType} limits={limits} style={school} unit={unit} />
      <LifePart checks={checks} charges={history.charges} limits={limits} style={school} />
      <StatePart history={history} limits={limits} role={actor.role} />
      {can(actor.role, 'pack.add') && !isLocked ? <CopyPart pack={pack} /> : null}
      <LogPart checks={checks} changes={changes} style={school} />
    </Sheet>
  );
}

function labelWords({ series, parallel, capacityMah, batch }: Pack): string {
  return `${cellsInWords({ series, parallel })}, ${capacityMah} mAh${batch === null ? '' : `, batch ${batch}`}`;
}

function PackActions({ pack, role }: { readonly pack: Pack; readonly role: string }) {
  return (
    <div className="act-row">
      <ButtonLink kind={pack.state === 'in-use' || pack.state === 'watch' ? 'main' : 'outline'} href={`/packs/${pack.id}/check`}>Check it</ButtonLink>
      {can(role, 'pack.change') ? <ButtonLink href={`/packs/${pack.id}/edit`}>Change its details</ButtonLink> : null}
      <ButtonLink href={`/packs/labels?pack=${pack.id}`}>Print its label</ButtonLink>
    </div>
  );
}

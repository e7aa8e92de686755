import type { Metadata } from 'next';
import Link from 'next/link';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { PackStateShapes } from '@/app/_components/packs/pack-state-mark';
import { can } from '@/lib/access/can';
import { needOf, readPackFilter } from '@/lib/packs/pack-list';
import { requireMay } from '@/lib/server/actor';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { packLimitsOf } from '@/lib/server/packs/pack-limits';
import { listOfPacks, type PackList } from '@/lib/server/packs/read-packs';
import { currentSchool } from '@/lib/server/people/current-school';
import { OpenByLabel } from './_parts/open-by-label';
import { PackEmpty } from './_parts/pack-empty';
import { PackFilters } from './_parts/pack-filters';
import { PackTable } from './_parts/pack-table';

export const metadata: Metadata = { title: 'Packs' };

interface PacksPageProps { readonly searchParams: Promise<{ readonly find?: string | string[]; readonly state?: string | string[] }> }

export default async function PacksPage({ searchParams }: PacksPageProps) {
  const actor = await requireMay('pack.read');
  const [school, limits, query] = await Promise.all([currentSchool(actor), packLimitsOf(actor), searchParams]);
  const [filter, now] = [readPackFilter(query), new Date()];
  const list = await listOfPacks(actor, filter, now);
  const pressing = list.shown.filter((listed) => needOf(limits, listed, now)?.urgency === 'now').length;
  const mayAdd = can(actor.role, 'pack.add');
  return (
    <Sheet marginLabel="About the register" margin={<AboutRegister limits={limits} />}>
      <PackStateShapes />
      <PageHead crumb={school.schoolName} title={titleOf(list, pressing)} />
      {list.counts.all === 0 ? <PackEmpty mayAdd={mayAdd} /> : (
        <>
          <PackFilters filter={filter} counts={list.counts} />
          <OpenByLabel />
          <div className="act-row">
            {mayAdd ? <><ButtonLink kind="main" href="/packs/new">Add a pack</ButtonLink><ButtonLink href="/packs/import">Read a table</ButtonLink></> : null}
            <ButtonLink href="/packs/labels">Print labels</ButtonLink>
            <ButtonLink href="/packs/export" download="packs.csv">Save as CSV</ButtonLink>
          </div>
          <p className="vh" role="status">{list.shown.length === 1 ? 'One pack shown' : `${list.shown.length} packs shown`}, those that need you first</p>
          {list.shown.length === 0 ? <p>No pack is like that. <Link href="/packs" prefetch={false}>Show all that are here</Link></p> : <PackTable packs={list.shown} limits={limits} now={now} style={school} />}
        </>
      )}
    </Sheet>
  );
}

function titleOf({ counts, shown }: PackList, pressing: number): string {
  if (counts.all === 0) return 'No packs yet';
  const here = counts.here === 1 ? 'One pack' : `${counts.here} packs`;
  if (pressing > 0) return `${here}, ${pressing === 1 ? 'one needs' : `${pressing} need`} you`;
  return shown.length === counts.here ? `${here} here` : here;
}

function AboutRegister({ limits }: { readonly limits: SchoolPackLimits }) {
  return (
    <>
      <MarginNote title="What needs you">An isolated pack presses until somebody has said where it lies, and again when it waits longer than a week.</MarginNote>
      <MarginNote title="Spread"><p>Difference between the highest and the lowest cell at the last check. {limitWords(limits)}</p></MarginNote>
      <MarginNote title="The register moves nothing">A state written here changes no pack. Whoever writes it says where the pack is.</MarginNote>
    </>
  );
}

/** The limits in force in this school. */
function limitWords(limits: SchoolPackLimits): string {
  const figures = limits.rules.filter(({ measure }) => measure === 'cellSpread').map(({ value, verdict }) => `${Math.round(Number(value) * 1000)} mV: ${verdict}`);
  return `${figures.reverse().join('. ')}.`;
}

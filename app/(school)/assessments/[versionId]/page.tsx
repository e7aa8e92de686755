import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Progress } from '@/app/_components/ui/progress';
import { Sheet } from '@/app/_components/ui/sheet';
import { firstOpenPage } from '@/lib/assessments/walk';
import { requireMay } from '@/lib/server/actor';
import { stateInFull } from '@/lib/server/assessments/list';
import { openVersion } from '@/lib/server/assessments/open-version';
import { overviewOf } from '@/lib/server/assessments/overview';
import { whatSaved } from '@/lib/server/assessments/what-saved';
import { knownAnswers } from '@/lib/server/assessments/known';
import { progressOf, timeLeft } from './_parts/progress-of';
import { SavedNotice } from './_parts/saved-notice';
import { OverviewLists } from './_parts/overview-lists';
import { OverviewNotes } from './_parts/overview-notes';
import { PageList } from './_parts/page-list';

interface PageProps {
  readonly params: Promise<{ readonly versionId: string }>;
  readonly searchParams: Promise<{ readonly saved?: string }>;
}

export async function generateMetadata({ params }: Pick<PageProps, 'params'>): Promise<Metadata> {
  const open = await openVersion(await requireMay('assessment.read'), (await params).versionId);
  return { title: open?.version.title ?? 'Assessment' };
}

/** Where a version stands: what is answered, what is left, and what to do about it. */
export default async function OverviewPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('assessment.read');
  const { versionId } = await params;
  const open = await openVersion(actor, versionId);
  const overview = open === null ? null : await overviewOf(actor, open);
  if (open === null || overview === null) notFound();
  const { version, walk, closed } = open;
  const saved = (await searchParams).saved === undefined ? null : await whatSaved(actor, open);
  const known = closed === null ? (await knownAnswers(actor, open)).length : 0;
  const next = firstOpenPage(walk);
  return (
    <Sheet margin={<OverviewNotes open={open} overview={overview} />}>
      <PageHead
        crumb={<><Link href="/assessments" prefetch={false}><Icon name="left" />Assessments</Link><span>{version.siteName}{version.season === '' ? '' : `, ${version.season}`}, version {version.number}, {stateInFull(overview.listed)}</span></>}
        title={version.title}
        lead={leadOf(overview.open.length, overview.notSure.length)}
      >
        <Progress sections={progressOf(walk)} aside={timeLeft(walk)} />
      </PageHead>
      {saved === null ? null : <SavedNotice saved={saved} />}
      {closed === null ? null : <Notice title={closed} level={2} />}
      <div className="actions">
        {version.state === 'returned' ? <ButtonLink kind="now" href={`/assessments/${versionId}/review`}>See what is to be changed</ButtonLink> : null}
        {version.state === 'with-officer' ? <ButtonLink kind="main" href={`/assessments/${versionId}/review`}>Review</ButtonLink> : null}
        {closed !== null || next === null ? null : <ButtonLink kind="main" href={known > 0 ? `/assessments/${versionId}/known` : `/assessments/${versionId}/walk/${next.id}`}>{known > 0 ? 'Confirm what is known' : `Go on with “${next.title}”`}</ButtonLink>}
        {closed === null && next === null && version.preparedById === actor.personId ? <ButtonLink kind="main" href={`/assessments/${versionId}/hand-over`}>Hand it to the officer</ButtonLink> : null}
        <ButtonLink href={`/assessments/${versionId}/result`}>See the result</ButtonLink>
      </div>
      <PageList walk={walk} versionId={versionId} />
      <OverviewLists overview={overview} open={open} />
    </Sheet>
  );
}

function leadOf(open: number, notSure: number): string {
  const unsure = notSure === 0 ? '' : ` ${notSure === 1 ? 'One answer is' : `${notSure} answers are`} “not sure”.`;
  if (open === 0) return `Every question is answered.${unsure}`;
  return `${open === 1 ? 'One page is' : `${open} pages are`} not finished.${unsure} What is left open counts as not sure.`;
}

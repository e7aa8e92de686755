import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound, redirect } from 'next/navigation';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Progress } from '@/app/_components/ui/progress';
import { Sheet } from '@/app/_components/ui/sheet';
import { aboutTime } from '@/app/_components/questions/about-time';
import { requireMay } from '@/lib/server/actor';
import { openVersion } from '@/lib/server/assessments/open-version';
import { walkPageView } from '@/lib/server/assessments/walk-page';
import { whatSaved } from '@/lib/server/assessments/what-saved';
import { progressOf, timeLeft } from '../../_parts/progress-of';
import { SavedNotice } from '../../_parts/saved-notice';
import { WalkForm } from './walk-form';
import { WalkNotes } from './walk-notes';

interface PageProps {
  readonly params: Promise<{ readonly versionId: string; readonly pageId: string }>;
  readonly searchParams: Promise<{ readonly saved?: string }>;
}

export async function generateMetadata({ params }: Pick<PageProps, 'params'>): Promise<Metadata> {
  const { versionId, pageId } = await params;
  const open = await openVersion(await requireMay('assessment.read'), versionId);
  return { title: open?.walk.pages.find(({ id }) => id === pageId)?.title ?? 'Questions' };
}

/** One page of the walk. What an answer changes is shown after saving, on the page that follows. */
export default async function QuestionPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('assessment.read');
  const { versionId, pageId } = await params;
  const open = await openVersion(actor, versionId);
  if (open === null) notFound();
  const view = await walkPageView(actor, open, pageId);
  if (view === null) redirect(`/assessments/${versionId}/walk`);
  const { version, walk, closed } = open;
  const { page } = view;
  const saved = (await searchParams).saved === undefined ? null : await whatSaved(actor, open);
  return (
    <Sheet margin={<WalkNotes open={open} view={view} />} marginLabel="Beside these questions">
      <PageHead
        crumb={<><Link href={`/assessments/${versionId}`} prefetch={false}><Icon name="left" />To the overview</Link><span>{version.title}</span></>}
        title={page.title}
      >
        <Progress sections={progressOf(walk)} here={page.section} aside={timeLeft(walk)} />
        {page.seconds === null ? null : <p className="small muted">This page: {aboutTime(page.seconds)}</p>}
      </PageHead>
      {saved === null ? null : <SavedNotice saved={saved} />}
      {closed === null ? null : <Notice title={closed} level={2}><p>Nothing can be saved here.</p></Notice>}
      <WalkForm key={pageId} versionId={versionId} view={view} isClosed={closed !== null} />
    </Sheet>
  );
}

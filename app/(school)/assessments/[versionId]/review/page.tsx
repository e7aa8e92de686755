import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { type ReviewView, reviewView, SHOWN_ANSWERS } from '@/lib/server/signing/review-view';
import { AnswersBySection } from './_parts/answers-by-section';
import { CommentsOnWhole } from './_parts/comments-on-whole';
import { Decision } from './_parts/decision';
import { ShownNav } from './_parts/shown-nav';

export const metadata: Metadata = { title: 'Answers and comments' };

interface PageProps {
  readonly params: Promise<{ readonly versionId: string }>;
  readonly searchParams: Promise<{ readonly show?: string | string[] }>;
}

/** Every answer with what was said of it: the officer asks, the preparer answers, the officer decides. */
export default async function ReviewPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('assessment.read');
  const [{ versionId }, { show }] = [await params, await searchParams];
  const shown = SHOWN_ANSWERS.find((name) => name === show) ?? 'all';
  const review = await reviewView(actor, versionId, shown);
  if (review === null) notFound();
  const { view: { version, words } } = review;
  return (
    <Sheet wide>
      <PageHead
        crumb={<><Link href={`/assessments/${versionId}/result`} prefetch={false}><Icon name="left" />Result</Link><span>{version.title}, version {version.number}, prepared by {version.preparedByName}</span></>}
        title={titleOf(review)}
        lead={leadOf(review)}
      />
      <Notice kind={words.kind} title={words.title} level={2}><p>{words.next}</p></Notice>
      <ShownNav versionId={versionId} review={review} shown={shown} />
      <AnswersBySection review={review} actorId={actor.personId} shown={shown} />
      <CommentsOnWhole review={review} actorId={actor.personId} />
      <Decision review={review} />
    </Sheet>
  );
}

function titleOf({ counts, view }: ReviewView): string {
  const changed = view.standing.basedOnId === null ? '' : `, ${counts.changed} changed since the version before`;
  return `${counts.all} answers${changed}`;
}

function leadOf({ counts, unsettled, view: { openStops }, mayLook }: ReviewView): string {
  const sentences = [
    ...(mayLook ? [`You have looked at ${counts.all - counts.unseen}.`] : []),
    unsettled === 0 ? 'No comment is open.' : `${unsettled === 1 ? 'One comment is' : `${unsettled} comments are`} open.`,
    openStops.length === 0 ? 'No stop condition is open.' : `${openStops.length === 1 ? 'One stop condition is' : `${openStops.length} stop conditions are`} open.`,
  ];
  return sentences.join(' ');
}


import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { keptPaper } from '@/lib/server/signing/paper-view';
import { resultView } from '@/lib/server/signing/result-view';

export const metadata: Metadata = { title: 'The paper' };

interface PageProps { readonly params: Promise<{ readonly versionId: string }> }

/** The paper of a version on screen, out of the same data that its file was made from. */
export default async function PaperPage({ params }: PageProps) {
  const actor = await requireMay('document.read');
  const { versionId } = await params;
  const [view, paper] = [await resultView(actor, versionId), await keptPaper(actor, versionId)];
  if (view === null) notFound();
  const { version, words, may } = view;
  return (
    <Sheet>
      <PageHead crumb={<><Link href={`/assessments/${versionId}/result`} prefetch={false}><Icon name="left" />Result</Link><span>{version.title}, version {version.number}</span></>} title="The paper" />
      <Notice kind={words.kind} title={words.title} level={2}><p>{words.next}</p></Notice>
      {paper === null ? (
        <Empty level={2} title="No paper yet"><p>It is made when the assessment is handed over to the officer. Until then the result is what there is.</p>{may.handOver ? <p className="row"><ButtonLink kind="main" href={`/assessments/${versionId}/hand-over`}>Read it and hand it over</ButtonLink></p> : null}</Empty>
      ) : (
        <>
          <p className="row after"><ButtonLink href={`/assessments/${versionId}/paper.pdf?number=${paper.number}`}>The file (PDF)</ButtonLink>{may.sign ? <ButtonLink kind="main" href={`/assessments/${versionId}/sign`}>Sign it</ButtonLink> : null}</p>
          <p className="small muted">The file is what was signed. This page shows the same for reading on a screen and for screen readers.</p>
          <PaperSheet paper={paper} label="The paper" />
        </>
      )}
    </Sheet>
  );
}

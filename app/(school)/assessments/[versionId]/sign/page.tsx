import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ReadAndSign } from '@/app/_components/paper/read-and-sign';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { keptPaper } from '@/lib/server/signing/paper-view';
import { resultView } from '@/lib/server/signing/result-view';
import { signOffAction } from './actions';

export const metadata: Metadata = { title: 'Sign' };

interface PageProps { readonly params: Promise<{ readonly versionId: string }> }

/** The officer reads the very file that the preparer signed, and signs it. */
export default async function SignPage({ params }: PageProps) {
  const actor = await requireMay('assessment.sign-as-officer');
  const { versionId } = await params;
  const [view, paper] = [await resultView(actor, versionId), await keptPaper(actor, versionId)];
  if (view === null) notFound();
  const { version, standing, words, may } = view;
  const waiting = standing.papers.find((one) => one.state === 'part-signed' && one.replacedAt === null);
  const head = <PageHead crumb={<><Link href={`/assessments/${versionId}/review`} prefetch={false}><Icon name="left" />Answers and comments</Link><span>{version.title}, version {version.number}</span></>} title="Read the paper, then sign it" lead={`${version.preparedByName} has signed it. With your signature it is in force.`} />;
  if (!may.sign || waiting === undefined || paper === null) return <Sheet>{head}<Notice title={words.title} kind={words.kind} level={2}><p>{words.next}</p></Notice></Sheet>;
  return (
    <Sheet>
      {head}
      <ReadAndSign
        paper={paper} label="The paper as you would sign it" file={{ href: `/assessments/${versionId}/paper.pdf?number=${waiting.number}`, number: waiting.number }}
        action={signOffAction} id="sign-off" carries={{ versionId, documentId: waiting.id }}
        agree={`I have read paper ${waiting.number}, and agree to it as it is`}
        instead={<Link href={`/assessments/${versionId}/review#decision`} prefetch={false}>Return it instead</Link>}
        waiting="The file is being signed. Stay on this page."
      />
    </Sheet>
  );
}

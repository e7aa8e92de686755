import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { RiskPage } from '@/app/_components/result/risk-page';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { resultView } from '@/lib/server/signing/result-view';

export const metadata: Metadata = { title: 'Risk' };

interface PageProps { readonly params: Promise<{ readonly versionId: string; readonly riskId: string }> }

/** One risk of an assessment in full, on a page of its own. */
export default async function RiskOfVersionPage({ params }: PageProps) {
  const actor = await requireMay('assessment.read');
  const { versionId, riskId } = await params;
  const view = await resultView(actor, versionId);
  const risk = view?.scored.result.risks.find(({ id }) => id === riskId);
  if (view === null || risk === undefined) notFound();
  const { result, content } = view.scored;
  const next = result.risks.find(({ rank }) => rank === risk.rank + 1);
  return (
    <Sheet>
      <PageHead crumb={<><Link href={`/assessments/${versionId}/result#ranking`} prefetch={false}><Icon name="left" />Ranking</Link><span>{risk.rank} of {result.risks.length}</span></>} title={risk.title} />
      <RiskPage content={content} risk={risk} result={result} level={2} />
      {next === undefined ? null : <p className="after"><Link href={`/assessments/${versionId}/result/${next.id}`} prefetch={false}>Next: {next.title}</Link></p>}
    </Sheet>
  );
}

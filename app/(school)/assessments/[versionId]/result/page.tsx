import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { AssumptionsPart } from '@/app/_components/result/assumptions-part';
import { DoubtPart } from '@/app/_components/result/doubt-part';
import { guidanceOfRoom } from '@/app/_components/result/guidance-of-room';
import { HeatPart } from '@/app/_components/result/heat-part';
import { MarginNotes } from '@/app/_components/result/margin-notes';
import { MatrixPart } from '@/app/_components/result/matrix-part';
import { RankingPart } from '@/app/_components/result/ranking-part';
import { SMOKE_GUIDANCE } from '@/app/_components/result/smoke-guidance';
import { SmokePart } from '@/app/_components/result/smoke-part';
import { surroundingsOf } from '@/app/_components/result/surroundings';
import { Icon } from '@/app/_components/ui/icon';
import { JumpList } from '@/app/_components/ui/jump-list';
import { OpenForPrint } from '@/app/_components/ui/open-for-print';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { smokeThresholds } from '@/lib/charts/smoke-points';
import { requireMay } from '@/lib/server/actor';
import { resultView } from '@/lib/server/signing/result-view';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { verdictOf } from '@/lib/wording/verdict';
import { ActionsPart } from './_parts/actions-part';
import { addressesIn } from './_parts/addresses';
import { FirstPart } from './_parts/first-part';
import { PapersPart } from './_parts/papers-part';
import { ResultStops } from './_parts/result-stops';
import { StandingPart } from './_parts/standing-part';

export const metadata: Metadata = { title: 'Result' };

interface PageProps { readonly params: Promise<{ readonly versionId: string }> }

const JUMPS = [
  { id: 'stops', text: 'Stop conditions' },
  { id: 'ranking', text: 'Ranking' },
  { id: 'matrix', text: 'Matrix' },
  { id: 'first', text: 'What to do first' },
  { id: 'actions', text: 'Actions' },
  { id: 'smoke', text: 'Smoke and heat' },
  { id: 'doubt', text: 'Go and check' },
];

/** What an assessment comes to, where it stands, and who does what next. */
export default async function ResultPage({ params }: PageProps) {
  const actor = await requireMay('assessment.read');
  const { versionId } = await params;
  const view = await resultView(actor, versionId);
  if (view === null) notFound();
  const { version, scored: { content, result, document } } = view;
  const { ofQuestion, ofRisk } = addressesIn(view);
  const deadly = result.risks.filter((risk) => riskCouldKill(risk, content.harmWeights)).length;
  const verdict = verdictOf({ stops: view.openStops, risks: result.risks, deadly });
  return (
    <Sheet marginLabel="Behind the numbers" margin={<MarginNotes content={content} result={result} />}>
      <PageHead
        crumb={<><Link href={`/assessments/${versionId}`} prefetch={false}><Icon name="left" />{version.title}</Link><span>version {version.number}{view.isKept ? ', as it was handed over' : ', worked out from the answers as they are now'}</span></>}
        title={verdict.sentence}
        lead={verdict.why}
      />
      <StandingPart view={view} />
      <JumpList jumps={JUMPS} />
      <ResultStops view={view} addressOf={ofQuestion} />
      <RankingPart content={content} result={result} addressOfRisk={ofRisk} />
      <MatrixPart result={result} weights={content.harmWeights} />
      <FirstPart view={view} />
      <ActionsPart view={view} />
      <SmokePart cases={result.smoke} thresholds={smokeThresholds(content)} guidance={guidanceOfRoom(content, document, SMOKE_GUIDANCE)} />
      <HeatPart heats={result.heat} around={surroundingsOf(document)} />
      <DoubtPart content={content} result={result} addressOf={ofQuestion} />
      <AssumptionsPart content={content} result={result} parts={document} addressOf={ofQuestion} />
      <PapersPart view={view} />
      <OpenForPrint />
    </Sheet>
  );
}

import type { Metadata } from 'next';
import { Frame } from '@/app/_components/ui/frame';
import { JumpList } from '@/app/_components/ui/jump-list';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { OpenForPrint } from '@/app/_components/ui/open-for-print';
import { PageHead } from '@/app/_components/ui/page-head';
import { ENGINE_VERSION } from '@/lib/core/version';
import { ControlsPart } from './_parts/controls-part';
import { EditionsPart } from './_parts/editions-part';
import { GuidancePart } from './_parts/guidance-part';
import { KindsPart } from './_parts/kinds-part';
import { LimitsPart } from './_parts/limits-part';
import { MatricesPart } from './_parts/matrices-part';
import { NumbersPart } from './_parts/numbers-part';
import { QuestionsPart } from './_parts/questions-part';
import { RulesPart } from './_parts/rules-part';
import { ScenariosPart } from './_parts/scenarios-part';
import { StepsPart } from './_parts/steps-part';
import { StopsPart } from './_parts/stops-part';
import { editionAsked } from './_words/edition-words';

export const metadata: Metadata = { title: 'How it is computed' };

const JUMPS = [
  { id: 'steps', text: 'Step by step' },
  { id: 'kinds', text: 'Kinds of numbers' },
  { id: 'questions', text: 'Questions' },
  { id: 'stops', text: 'Stop conditions' },
  { id: 'rules', text: 'Smoke, heat, packs' },
  { id: 'numbers', text: 'Numbers' },
  { id: 'scenarios', text: 'Risks' },
  { id: 'controls', text: 'Controls' },
  { id: 'matrices', text: 'Grades' },
  { id: 'guidance', text: 'Guidance' },
  { id: 'editions', text: 'Editions' },
  { id: 'limits', text: 'What it does not claim' },
];

interface MethodPageProps { readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>> }

/** The method in words and in numbers, out of the content that the calculation reads. */
export default async function MethodPage({ searchParams }: MethodPageProps) {
  const shown = editionAsked((await searchParams)['edition']);
  const { content, number, inForce } = shown;
  return (
    <Frame here="method" marginLabel="Versions" margin={<MarginNote title={`Edition ${number}`}><p>Content {content.version}, engine {ENGINE_VERSION}.</p><p>Every number on this page is read from the same data as the calculation.</p><p><a href="#editions">The other editions</a></p></MarginNote>}>
      <PageHead title="It ranks risks by how often times how bad, and says how much of that is judgement." lead="Published values where there are any, the trade’s practice where there is one, our own judgement for the rest, each marked as what it is." />
      {inForce ? null : <Notice level={2} title={`This is edition ${number}, which is no longer in force`}><p>It stays as it was published. New assessments start with <a href="/method">the edition in force</a>.</p></Notice>}
      <JumpList jumps={JUMPS} />
      <StepsPart content={content} />
      <KindsPart content={content} />
      <QuestionsPart content={content} />
      <StopsPart content={content} />
      <RulesPart content={content} />
      <NumbersPart content={content} />
      <ScenariosPart content={content} />
      <ControlsPart content={content} />
      <MatricesPart content={content} />
      <GuidancePart content={content} />
      <EditionsPart shown={shown} />
      <LimitsPart />
      <OpenForPrint />
    </Frame>
  );
}

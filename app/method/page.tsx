import type { Metadata } from 'next';
import { Frame } from '@/app/_components/ui/frame';
import { JumpList } from '@/app/_components/ui/jump-list';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { currentContent } from '@/lib/content/editions';
import { ENGINE_VERSION } from '@/lib/core/version';
import { ControlsPart } from './_parts/controls-part';
import { KindsPart } from './_parts/kinds-part';
import { LimitsPart } from './_parts/limits-part';
import { MatricesPart } from './_parts/matrices-part';
import { NumbersPart } from './_parts/numbers-part';
import { RulesPart } from './_parts/rules-part';
import { ScenariosPart } from './_parts/scenarios-part';
import { StepsPart } from './_parts/steps-part';

export const metadata: Metadata = { title: 'How it is computed' };

const JUMPS = [
  { id: 'steps', text: 'Step by step' },
  { id: 'kinds', text: 'Kinds of numbers' },
  { id: 'rules', text: 'Smoke, heat, packs' },
  { id: 'numbers', text: 'Numbers' },
  { id: 'scenarios', text: 'Risks' },
  { id: 'controls', text: 'Controls' },
  { id: 'matrices', text: 'Grades' },
  { id: 'limits', text: 'What it does not claim' },
];

/** The method in words and in numbers, out of the content that the calculation reads. */
export default function MethodPage() {
  return (
    <Frame here="method" marginLabel="Versions" margin={<MarginNote title="This edition"><p>Content {currentContent.version}, engine {ENGINE_VERSION}.</p><p>Every number on this page is read from the same data as the calculation.</p></MarginNote>}>
      <PageHead title="It ranks risks by how often times how bad, and says how much of that is judgement." lead="Published values where there are any, the trade’s practice where there is one, our own judgement for the rest, each marked as what it is." />
      <JumpList jumps={JUMPS} />
      <StepsPart content={currentContent} />
      <KindsPart content={currentContent} />
      <RulesPart content={currentContent} />
      <NumbersPart content={currentContent} />
      <ScenariosPart content={currentContent} />
      <ControlsPart content={currentContent} />
      <MatricesPart content={currentContent} />
      <LimitsPart />
    </Frame>
  );
}

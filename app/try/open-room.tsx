'use client';

import { useMemo } from 'react';
import { Frame } from '@/app/_components/ui/frame';
import { JumpList } from '@/app/_components/ui/jump-list';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { OpenForPrint } from '@/app/_components/ui/open-for-print';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Skeleton } from '@/app/_components/ui/skeleton';
import { AnswersPart } from './_answers/answers-part';
import { KeepPart } from './_open/keep-part';
import { OpenAnother } from './_open/open-another';
import { RemarksNotice } from './_open/remarks-notice';
import { RoomCrumb } from './_open/room-crumb';
import { WithoutScript } from './_open/without-script';
import { MarginNotes } from '@/app/_components/result/margin-notes';
import { RoomResult } from './_result/room-result';
import { ScoreStrip } from './_result/score-strip';
import { ScoreTrouble } from './_result/score-trouble';
import { remarksIn, resultIn } from './_score/score-desk';
import { useScore } from './_score/use-score';
import { useContent } from './_state/use-content';
import { editPlan } from './_state/edit-plan';
import { type OpenDocument, type PageState, undoable } from './_state/page-state';
import { textOf, titleOf } from './_state/whole-document';
import { leadOf, verdictFrom } from './_words/verdict-of-score';
import type { Ways } from './_state/ways';

interface OpenRoomProps { readonly open: OpenDocument; readonly state: PageState; readonly ways: Ways; readonly draws: number }

const JUMPS = [
  { id: 'stops', text: 'Stop conditions' },
  { id: 'ranking', text: 'Ranking' },
  { id: 'matrix', text: 'Matrix' },
  { id: 'first', text: 'What to do first' },
  { id: 'smoke', text: 'Smoke and heat' },
  { id: 'doubt', text: 'Go and check' },
  { id: 'answers', text: 'The answers' },
];

/** A room that is open: the verdict, its reasons, its answers. */
export function OpenRoom({ open, state, ways, draws }: OpenRoomProps) {
  const text = useMemo(() => textOf(open.whole), [open.whole]);
  const score = useScore(text, draws);
  const result = resultIn(score);
  const content = useContent();
  const verdict = verdictFrom(score, content.harmWeights);
  const plan = useMemo(() => editPlan(open.whole, ways.change), [open.whole, ways]);
  return (
    <Frame here="try" marginLabel="Behind the numbers" margin={result === null ? <MarginNote title="Nothing leaves this browser">The room is worked out here, beside the page.</MarginNote> : <MarginNotes content={content} result={result} />}>
      <PageHead crumb={<RoomCrumb open={open} />} title={verdict?.sentence ?? `Working it out: ${titleOf(open.whole)}`} lead={verdict === null ? undefined : leadOf(verdict, result)} />
      <WithoutScript />
      {state.trouble === null ? null : <Notice level={2} title="About this tab">{state.trouble}</Notice>}
      <ScoreTrouble score={score} />
      <RemarksNotice remarks={remarksIn(score)} content={content} />
      <JumpList jumps={JUMPS} />
      {result === null ? <div className="after"><Skeleton words="Worked out in this browser; it takes a moment." lines={8} /></div> : <RoomResult result={result} score={score} whole={open.whole} plan={plan} />}
      <AnswersPart whole={open.whole} edit={ways} />
      <KeepPart open={open} />
      <Section id="other" title="Another room"><OpenAnother here={open.source.kind === 'example' ? open.source.example : null} ways={ways} /></Section>
      <OpenForPrint />
      <ScoreStrip verdict={verdict} busy={score.stage !== 'scored'} undo={undoable(state)} onUndo={ways.undo} onStartAgain={ways.startAgain} />
    </Frame>
  );
}

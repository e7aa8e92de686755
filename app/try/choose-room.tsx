'use client';

import { Button } from '@/app/_components/ui/button';
import { Frame } from '@/app/_components/ui/frame';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { OpenAnother } from './_open/open-another';
import { WithoutScript } from './_open/without-script';
import { type PageState, undoable } from './_state/page-state';
import type { Ways } from './_state/ways';

interface ChooseRoomProps { readonly state: PageState; readonly ways: Ways }

/** Nothing is open yet: three rooms to start from, or one's own. */
export function ChooseRoom({ state, ways }: ChooseRoomProps) {
  const back = undoable(state);
  return (
    <Frame here="try" marginLabel="About this page" margin={<MarginNote title="Nothing leaves this browser">The room is read and worked out here. The page sends nothing anywhere; this tab keeps it over a reload and forgets it when it is closed.</MarginNote>}>
      <PageHead title="Try a room: see what may burn, how sure that is, and what to do first." lead="Start from one of three rooms and change its answers into yours." />
      <WithoutScript />
      {state.trouble === null ? null : <Notice level={2} title="About this tab">{state.trouble}</Notice>}
      {back === null ? null : <p className="after"><Button onClick={ways.undo}>Undo: {back}</Button></p>}
      <Section id="rooms" title="Three rooms"><OpenAnother here={null} ways={ways} /></Section>
    </Frame>
  );
}

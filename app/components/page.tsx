import type { Metadata } from 'next';
import { Frame } from '@/app/_components/ui/frame';
import { JumpList } from '@/app/_components/ui/jump-list';
import { PageHead } from '@/app/_components/ui/page-head';
import { ChartParts } from './chart-parts';
import { ControlParts } from './control-parts';
import { MarkParts } from './mark-parts';
import { sampleRoom } from './sample';
import { ThemeParts } from './theme-parts';

export const metadata: Metadata = { title: 'Component sheet', robots: { index: false } };

/** Every part in each of its states, for those who build with them. */
export default function ComponentSheet() {
  return (
    <Frame>
      <PageHead title="Component sheet" lead="Ink is what we know, sand what we do not, ember what needs a person now. Each part in each state; the last part shows the dark theme beside the light one." />
      <JumpList jumps={[{ id: 'marks', text: 'Marks' }, { id: 'buttons', text: 'Buttons' }, { id: 'fields', text: 'Fields' }, { id: 'charts', text: 'Charts' }, { id: 'themes', text: 'Both themes' }]} />
      <MarkParts />
      <ControlParts />
      <ChartParts room={sampleRoom()} />
      <ThemeParts />
    </Frame>
  );
}

import Link from 'next/link';
import type { ReactNode } from 'react';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import type { EventView } from '@/lib/server/events/event-view';

interface EditFrameProps { readonly view: EventView; readonly title: string; readonly lead?: string; readonly note?: { readonly title: string; readonly words: string }; readonly children: ReactNode }

/** A page on which one part of an event is written; says so when it cannot be written in now. */
export function EditFrame({ view: { event, may }, title, lead, note, children }: EditFrameProps) {
  return (
    <Sheet margin={note === undefined ? undefined : <MarginNote title={note.title}>{note.words}</MarginNote>}>
      <PageHead crumb={<Link href={`/events/${event.id}`} prefetch={false}><Icon name="left" />{event.title}</Link>} title={title} lead={lead} />
      {may.change ? children : <Notice title="It cannot be changed now" level={2}><p>It lies with the officer, is closed, or somebody else prepares it.</p></Notice>}
    </Sheet>
  );
}

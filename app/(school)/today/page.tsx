import type { Metadata } from 'next';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { gatherToday } from '@/lib/server/today/gather';
import { AlarmLine } from './_parts/alarm-line';
import { EventPart } from './_parts/event-part';
import { NowPart } from './_parts/now-part';
import { PaperPart } from './_parts/paper-part';
import { SeasonNote } from './_parts/season-note';
import { SessionPart } from './_parts/session-part';
import { SoonPart } from './_parts/soon-part';

export const metadata: Metadata = { title: 'Today' };

/** What needs this person now, and nothing that does not. */
export default async function TodayPage() {
  const actor = await requireMay('school.read');
  const now = new Date();
  const view = await gatherToday(actor, now);
  const { today, school, day } = view;
  return (
    <Sheet margin={can(actor.role, 'trend.read') ? <SeasonNote actor={actor} now={now} /> : undefined} marginLabel="The season">
      <PageHead crumb={`${day}, ${school.schoolName}`} title={today.title} />
      <AlarmLine school={school} />
      <NowPart items={today.now} />
      <SoonPart items={today.soon} isAll={today.now.length === 0} />
      <SessionPart view={view} may={can(actor.role, 'session.log')} />
      {view.papers.length === 0 ? null : <PaperPart papers={view.papers} />}
      {view.events.length === 0 ? null : <EventPart events={view.events} />}
    </Sheet>
  );
}

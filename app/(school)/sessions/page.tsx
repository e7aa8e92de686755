import type { Metadata } from 'next';
import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { listOfSessions } from '@/lib/server/sessions/read-sessions';
import { SessionQuerySchema } from '@/lib/sessions/session-list';
import { SessionSearch } from './_parts/session-search';
import { SessionTable } from './_parts/session-table';

export const metadata: Metadata = { title: 'Sessions' };

interface SessionsPageProps { readonly searchParams: Promise<{ readonly find?: string | string[] }> }

export default async function SessionsPage({ searchParams }: SessionsPageProps) {
  const actor = await requireMay('session.read');
  const [school, { find }] = [await currentSchool(actor), await searchParams];
  const query = SessionQuerySchema.parse({ find: [find ?? ''].flat()[0] });
  const { shown, all } = await listOfSessions(actor, query);
  return (
    <Sheet margin={<AboutLog seesTrend={can(actor.role, 'trend.read')} />} marginLabel="About the log">
      <PageHead crumb={school.schoolName} title={all === 0 ? 'No session yet' : all === 1 ? 'One session' : `${all} sessions`} />
      <p className="row list-tools">
        {can(actor.role, 'session.log') ? <ButtonLink kind="main" href="/sessions/new">Make the opening check</ButtonLink> : null}
        {all === 0 ? null : <ButtonLink href={`/sessions/list.csv?find=${encodeURIComponent(query.find)}`} download="sessions.csv">Save as CSV</ButtonLink>}
      </p>
      {all === 0
        ? <Empty level={2} title="Nothing is logged"><p>A session begins with a look round: detection on, ways out clear, a first-aider here. Then log which packs were charged and which crashed.</p></Empty>
        : <><SessionSearch find={query.find} />{shown.length === 0 ? <p>No session is like that. <Link href="/sessions" prefetch={false}>Show all</Link></p> : <SessionTable sessions={shown} style={school} />}</>}
    </Sheet>
  );
}

function AboutLog({ seesTrend }: { readonly seesTrend: boolean }) {
  return (
    <>
      <MarginNote title="Why charges are counted">An incident says little without how often nothing happened. Counted charges say how often it could have.</MarginNote>
      {seesTrend ? <MarginNote title="The trend"><p><Link href="/trend" prefetch={false}>Incidents for 1,000 charges</Link></p></MarginNote> : null}
    </>
  );
}

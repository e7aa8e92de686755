import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Section } from '@/app/_components/ui/section';
import { countWords, stateOfSession, totalsOf } from '@/lib/sessions/session';
import { foundWords } from '@/lib/sessions/session-list';
import type { TodayView } from '@/lib/server/today/gather';
import { momentWords } from '@/lib/wording/dates';

/** The last session, and the way into the next: it begins with a look round. */
export function SessionPart({ view: { last, openSessions, school, today }, may }: { readonly view: Pick<TodayView, 'last' | 'openSessions' | 'school' | 'today'>; readonly may: boolean }) {
  return (
    <Section id="session" title="Sessions" aside={<Link href="/sessions" prefetch={false}>All</Link>}>
      {last === null ? <p>No session is logged yet. The opening check takes a minute; nobody charges or flies before it.</p> : <LastSession session={last} when={momentWords(last.startedAt, school)} />}
      {today.mayCharge ? null : <p><strong>Nobody charges now: see above.</strong></p>}
      {may && openSessions.length === 0 && today.mayCharge ? <p className="act-row"><ButtonLink href="/sessions/new">Make the opening check</ButtonLink></p> : null}
      {openSessions.map(({ id, siteName }) => <p className="act-row" key={id}><ButtonLink kind="main" href={`/sessions/${id}`}>Log packs in {siteName}</ButtonLink></p>)}
    </Section>
  );
}

function LastSession({ session, when }: { readonly session: NonNullable<TodayView['last']>; readonly when: string }) {
  const { packs, charges, crashes } = totalsOf(session);
  const state = stateOfSession(session);
  const words = state === 'stopped' ? `It did not begin: ${foundWords(session)}.` : `${countWords(packs, 'pack')}, ${countWords(charges, 'charge')}${crashes === null ? '' : `, ${countWords(crashes, 'crash')}`}. ${state === 'open' ? 'It is open.' : `At the closing check: ${foundWords(session)}.`}`;
  return <p><Link href={`/sessions/${session.id}`} prefetch={false}>{when}, {session.siteName}</Link>. {words}</p>;
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { sessionInFull } from '@/lib/server/sessions/read-sessions';
import { openingShortfalls, stateOfSession } from '@/lib/sessions/session';
import { momentWords } from '@/lib/wording/dates';
import { ClosePart } from './_parts/close-part';
import { CorrectPart } from './_parts/correct-part';
import { CountsPart } from './_parts/counts-part';
import { LogPart } from './_parts/log-part';

export const metadata: Metadata = { title: 'Session' };

interface SessionPageProps { readonly params: Promise<{ readonly sessionId: string }> }

export default async function SessionPage({ params }: SessionPageProps) {
  const actor = await requireMay('session.read');
  const [{ sessionId }, school] = [await params, await currentSchool(actor)];
  const found = await sessionInFull(actor, sessionId);
  if (found === null) notFound();
  const { session, register } = found;
  const state = stateOfSession(session);
  const mayChange = can(actor.role, 'session.change', { actor, on: { schoolId: actor.schoolId, byId: session.byId } });
  return (
    <Sheet>
      <PageHead crumb={<><Link href="/sessions" prefetch={false}>Sessions</Link> {session.siteName}, {momentWords(session.startedAt, school)}, opened by {session.byName}</>} title={titleOf(state)} />
      {state === 'stopped' ? <Notice kind="act" level={2} title="Nobody charges or flies"><p>{openingShortfalls(session).join('; ')}. {session.note}</p><p><Link href="/sessions/new">Make the check again</Link> when it is put right.</p></Notice> : null}
      {state === 'open' && can(actor.role, 'session.log') ? <LogPart session={session} register={register} /> : null}
      {state === 'stopped' ? null : <CountsPart session={session} style={school} />}
      {state !== 'stopped' && mayChange && register.length > 0 ? <CorrectPart session={session} register={register} /> : null}
      {state === 'open' && can(actor.role, 'session.log') ? <ClosePart session={session} /> : null}
    </Sheet>
  );
}

function titleOf(state: ReturnType<typeof stateOfSession>): string {
  return { open: 'A session is open', closed: 'Session, closed', stopped: 'The session did not begin' }[state];
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { currentContent } from '@/lib/content/editions';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { incidentTitle } from '@/lib/incidents/incident-list';
import { sayFact } from '@/lib/incidents/say-fact';
import { incidentStateWords } from '@/lib/incidents/standing';
import { requireMay } from '@/lib/server/actor';
import { currentPaper, incidentPapers, riskTitle } from '@/lib/server/incidents/incident-paper';
import { factNames, mayCorrect } from '@/lib/server/incidents/read-incidents';
import { calendarDay } from '@/lib/wording/dates';
import { ActionsPart } from './_parts/actions-part';
import { ClosePart } from './_parts/close-part';
import { FactsPart } from './_parts/facts-part';
import { FollowUpPart } from './_parts/follow-up-part';
import { ForgetTyped } from './_parts/forget-typed';
import { PacksPart } from './_parts/packs-part';
import { PaperPart } from './_parts/paper-part';
import { PersonsPart } from './_parts/persons-part';
import { PhotosPart } from './_parts/photos-part';
import { SavedPart } from './_parts/saved-part';

export const metadata: Metadata = { title: 'Incident' };

interface IncidentPageProps {
  readonly params: Promise<{ readonly incidentId: string }>;
  readonly searchParams: Promise<{ readonly saved?: string }>;
}

const RISKS = currentContent.scenarios.map(({ id, title }) => ({ id, title }));

export default async function IncidentPage({ params, searchParams }: IncidentPageProps) {
  const actor = await requireMay('incident.read');
  const [{ incidentId }, { saved }] = [await params, await searchParams];
  const found = await incidentPapers(actor, incidentId);
  if (found === null) notFound();
  const { incident, papers } = found;
  const names = await factNames(actor);
  const open = incident.state !== 'closed';
  const may = { correct: open && mayCorrect(actor, incident), followUp: can(actor.role, 'incident.follow-up'), close: can(actor.role, 'incident.close') };
  return (
    <Sheet marginLabel="About this incident" margin={<AboutIncident incident={incident} mayRead={can(actor.role, 'assessment.read')} />}>
      <PageHead crumb={<Link href="/incidents" prefetch={false}><Icon name="left" />Incidents</Link>} title={`Incident ${incident.number}: ${incidentTitle(incident.facts)}`} lead={`${sayFact('when', incident.facts, names)}. State: ${incidentStateWords(incident.state)}.`} />
      <SavedPart incident={incident} saved={saved} />
      <PacksPart incident={incident} mayRight={open && may.close} />
      <FactsPart incident={incident} names={names} mayCorrect={may.correct} />
      <PersonsPart incident={incident} mayCorrect={may.correct} />
      <PhotosPart incident={incident} style={names.dates} mayAdd={may.correct} mayRemove={may.close} />
      <FollowUpPart incident={incident} style={names.dates} mayAdd={open && may.followUp} riskTitle={riskTitle} />
      <ActionsPart incident={incident} style={names.dates} today={calendarDay(new Date(), names.dates.timeZone)} mayAdd={open && may.followUp} />
      <ClosePart incident={incident} risks={RISKS} mayFollowUp={may.followUp} mayClose={may.close} />
      {may.followUp ? <PaperPart incident={incident} papers={papers} current={currentPaper(found)} style={names.dates} maySign={can(actor.role, 'incident.sign')} /> : null}
      {saved === undefined ? null : <ForgetTyped personId={actor.personId} />}
    </Sheet>
  );
}

function AboutIncident({ incident: { reviews }, mayRead }: { readonly incident: IncidentRecord; readonly mayRead: boolean }) {
  return (
    <>
      {reviews.length === 0 ? null : (
        <MarginNote title="Signed papers it contradicts">
          <ul>{reviews.map(({ versionId, title, settledAt }) => <li key={versionId}>{mayRead ? <Link href={`/assessments/${versionId}`} prefetch={false}>{title}</Link> : title}: {settledAt === null ? 'marked for review' : 'reviewed since'}</li>)}</ul>
        </MarginNote>
      )}
      <MarginNote title="Nothing is written over">A correction is shown with what was said first, and with its reason. The log keeps who did what.</MarginNote>
      <MarginNote title="Isolated in the register">An entry moves no pack. Only the safety officer releases one, and only one that lay near.</MarginNote>
    </>
  );
}

import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { FACT_TITLES, isFactName } from '@/lib/incidents/facts';
import { requireMay } from '@/lib/server/actor';
import { incidentChoices } from '@/lib/server/incidents/incident-form';
import { factNames, findIncident, mayCorrect } from '@/lib/server/incidents/read-incidents';
import { FactFields } from '../../../_parts/fact-fields';
import { PersonFields } from '../../../_parts/person-fields';
import { typedOfFact } from '../../../_parts/typed-of-fact';
import { correctAction } from '../../actions';

export const metadata: Metadata = { title: 'Correct an incident' };

/** One fact said anew, with the reason. */
export default async function CorrectPage({ params }: { readonly params: Promise<{ readonly incidentId: string; readonly field: string }> }) {
  const actor = await requireMay('incident.correct');
  const { incidentId, field } = await params;
  const incident = await findIncident(actor, incidentId);
  if (incident === null || incident.state === 'closed' || !mayCorrect(actor, incident) || !(field === 'persons' || isFactName(field))) notFound();
  const { dates } = await factNames(actor);
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/incidents/${incidentId}`} prefetch={false}><Icon name="left" />Incident {incident.number}</Link>} title={field === 'persons' ? 'Add people who were affected' : `Correct: ${FACT_TITLES[field]}`} lead="What was recorded first stays, and is shown beside this." />
      <ActionForm action={correctAction} id="correct" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="incidentId" value={incidentId} />
        <FormHidden name="field" value={field} />
        {field === 'persons' ? <PersonFields typed={{}} /> : <FactFields name={field} typed={typedOfFact(field, incident.facts, dates.timeZone)} choices={await incidentChoices(actor)} timeZone={dates.timeZone} />}
        <FormLine name="reason" label={field === 'persons' ? 'How it became known' : 'Why it is said anew'} autoComplete="off" />
        <p className="row"><FormSubmit>{field === 'persons' ? 'Add them' : 'Save the correction'}</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}

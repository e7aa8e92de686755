import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NOT_SAID, optionsOf } from '@/app/_components/events/venue-fields';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormNumber, FormSelect, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { AIR_RULES } from '@/lib/events/air-rules';
import { SAID, TRAVEL_WAYS } from '@/lib/events/choices';
import type { EventDetails } from '@/lib/events/details';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { EditFrame } from '../_parts/edit-frame';
import { saveTravelAction } from '../actions';

export const metadata: Metadata = { title: 'The way there' };

export default async function EventTravelPage({ params }: { readonly params: Promise<{ readonly eventId: string }> }) {
  const actor = await requireMay('event.change');
  const view = await eventView(actor, (await params).eventId);
  if (view === null) notFound();
  const { event } = view;
  return (
    <EditFrame view={view} title="The way there" note={{ title: 'Damaged packs', words: 'They do not travel with the team: not to a match, not back from one. The collection point says how they leave.' }}>
      <ActionForm action={saveTravelAction} check={{ of: 'travel' }} id="travel" faultsTitle="Not saved yet">
        <FormHidden name="eventId" value={event.id} />
        <FormHidden name="revision" value={String(event.revision)} />
        <div className="stack fields"><FormChoices name="way" legend="How do packs travel?" value={event.details.way ?? undefined} options={optionsOf(TRAVEL_WAYS)} /></div>
        <RoadFields details={event.details} />
        <AirFields details={event.details} />
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </EditFrame>
  );
}

interface FieldsProps { readonly details: EventDetails }

function Said({ name, label, hint, details }: FieldsProps & { readonly name: 'case' | 'leads' | 'neverWarm' | 'apart' | 'plan' | 'twoCheck' | 'carrierAsked' | 'cabinOnly' | 'terminals' | 'tested' | 'approved'; readonly label: string; readonly hint?: string }) {
  return <FormSelect name={name} label={label} hint={hint} value={details[name] ?? ''} options={[NOT_SAID, ...optionsOf(SAID)]} />;
}

function RoadFields({ details }: FieldsProps) {
  return (
    <Section id="road" title="By road" aside="Leave open when nobody goes by road">
      <div className="stack fields">
        <FormText name="vehicle" label="Vehicle, and who rides in it" rows={2} value={details.vehicle ?? ''} />
        <FormText name="stops" label="Way and stops" rows={2} value={details.stops ?? ''} />
        <Said details={details} name="case" label="Do packs travel in a rigid padded case, each apart?" />
        <Said details={details} name="leads" label="Is each lead covered, so that no two contacts meet?" />
        <Said details={details} name="neverWarm" label="Are packs never left in a warm or parked vehicle?" />
        <Said details={details} name="apart" label="Does the case ride apart from people, strapped down?" />
        <Said details={details} name="plan" label="Do driver and adults know what they do at smoke?" hint="Pull off the road clear of buildings, everybody out on the side away from traffic, call. Nobody opens the boot or the case." />
        <Said details={details} name="twoCheck" label="Do two people check every pack before it is loaded?" />
      </div>
    </Section>
  );
}

function AirFields({ details }: FieldsProps) {
  return (
    <Section id="air" title="By air" aside="Leave open when nobody flies">
      <div className="stack fields">
        <FormText name="carrier" label="Carriers, and when they were asked" rows={2} value={details.carrier ?? ''} />
        <Said details={details} name="carrierAsked" label="Has every carrier of the journey been asked for its rules?" hint="The carrier’s own rules come first" />
        <FormNumber name="flyers" label="People who fly" value={details.flyers === null ? '' : String(details.flyers)} />
        <Said details={details} name="cabinOnly" label="Do all packs fly in the cabin, none in checked baggage?" />
        <Said details={details} name="terminals" label="Are contacts covered pack by pack?" />
        <Said details={details} name="tested" label="Is the test summary of their type (UN 38.3) at hand?" />
        <Said details={details} name="approved" label="Has the carrier approved packs above 100 Wh in writing?" hint="Only when there are such packs" />
        <FormText name="approvalNote" label="The approval: by whom, when, for how many" rows={2} value={details.approvalNote ?? ''} />
        <div>
          <h3>What packs are held against</h3>
          <ul className="small">{AIR_RULES.map(({ id, rule, source, read }) => <li key={id}>{rule} <span className="muted">{source} ({read}).</span></li>)}</ul>
        </div>
      </div>
    </Section>
  );
}

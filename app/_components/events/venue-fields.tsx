import { FormChoices, FormTicks } from '@/app/_components/form/form-choices';
import { FormNumber, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { DETECTION_THERE, HALL_SHARED } from '@/lib/events/choices';
import type { VenueDetails } from '@/lib/events/details';
import type { Choice } from '@/lib/forms/choices';

export const NOT_SAID = { value: '', label: 'Nobody has said' } as const;

/** Choices of a list for a form. */
export function optionsOf(choices: readonly Choice[]): readonly { readonly value: string; readonly label: string; readonly hint?: string }[] {
  return choices.map(({ id, label, hint }) => ({ value: id, label, hint }));
}

interface VenueFieldsProps {
  readonly details: VenueDetails;
  /** what is asked of the venue, by the titles of the content */
  readonly asked: readonly { readonly id: string; readonly title: string; readonly hint: string }[];
  /** whether packs are to be charged there */
  readonly charging: boolean;
}

/** What the venue knows best; the team's form and the venue's own ask the same. */
export function VenueFields({ details, asked, charging }: VenueFieldsProps) {
  return (
    <>
      <Section id="alarm" title="Alarm and people in the building">
        <div className="stack fields">
          <FormText name="alarm" label="The building’s own alarm" hint="How it is set off, what it sounds like, whom it calls" rows={2} value={details.alarm ?? ''} />
          <FormChoices name="detection" legend="Smoke detection that day" value={details.detection ?? undefined} options={optionsOf(DETECTION_THERE)} />
          <FormText name="detectionNote" label="More on detection" rows={2} value={details.detectionNote ?? ''} />
          <FormChoices name="hall" legend="Who shares the hall and the building?" value={details.hall ?? undefined} options={optionsOf(HALL_SHARED)} />
          <FormText name="hallNote" label="Who, and when" rows={2} value={details.hallNote ?? ''} />
        </div>
      </Section>
      <Section id="spots" title="Places for packs">
        <div className="stack fields">
          <FormText name="chargingPlace" label="Where packs may be charged" hint={charging ? undefined : 'If any are charged there'} rows={2} value={details.chargingPlace ?? ''} />
          <FormNumber name="chargingAtOnce" label="Packs at once, at most" value={details.chargingAtOnce === null ? '' : String(details.chargingAtOnce)} />
          <FormText name="chargingCircuit" label="On which circuit" hint="Its breaker, what else hangs on it, when it was tested" rows={2} value={details.chargingCircuit ?? ''} />
          <FormText name="damagedPlace" label="Spot outdoors for a suspect pack" hint="Away from the building, its doors and windows, and from vehicles" rows={2} value={details.damagedPlace ?? ''} />
        </div>
      </Section>
      <Section id="provides" title="What the venue provides">
        <div className="stack fields">
          <FormTicks name="agreed" legend="Agreed" hint="Tick what the venue sees to" values={details.agreed} options={asked.map(({ id, title, hint }) => ({ value: id, label: title, hint }))} />
          <FormText name="providesNote" label="What else it provides" rows={2} value={details.providesNote ?? ''} />
        </div>
      </Section>
    </>
  );
}

import { FormChoices } from '@/app/_components/form/form-choices';
import { FormLine, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { type SiteDetails, SITE_KINDS } from '@/lib/places/place';
import { SITE_KIND_WORDS } from '@/lib/places/words';

const KIND_HINTS = { own: 'Number and meeting places are those of the school, unless you write others here', away: 'A venue you travel to: its own alarm, its own meeting place' } as const;

/** Everything that is asked about a site. */
export function SiteFields({ site }: { readonly site?: SiteDetails }) {
  return (
    <>
      <Section id="which" title="Which place">
        <div className="stack fields">
          <FormLine name="name" label="Name" value={site?.name} autoComplete="off" />
          <FormChoices name="kind" legend="Whose is it?" value={site?.kind} options={SITE_KINDS.map((kind) => ({ value: kind, label: SITE_KIND_WORDS[kind], hint: KIND_HINTS[kind] }))} />
          <FormLine name="address" label="Address for the fire service" hint="As a caller says it: street, gate, room" value={site?.address} autoComplete="off" />
        </div>
      </Section>
      <Section id="emergency" title="In an emergency there">
        <div className="stack fields">
          <FormLine name="emergencyNumber" label="Number to call when there is a fire" type="tel" hint="Leave empty where it is that of the school" value={site?.emergencyNumber ?? ''} autoComplete="off" />
          <FormLine name="meetingPlace" label="Where everybody meets outside" value={site?.meetingPlace ?? ''} autoComplete="off" />
          <FormLine name="secondMeetingPlace" label="Where they go if smoke drifts there" value={site?.secondMeetingPlace ?? ''} autoComplete="off" />
          <FormLine name="keyHolder" label="Who keeps the keys" value={site?.keyHolder ?? ''} autoComplete="off" />
          <FormLine name="keyHolderPhone" label="Their telephone" type="tel" value={site?.keyHolderPhone ?? ''} autoComplete="off" />
          <FormText name="notes" label="Notes" value={site?.notes ?? ''} rows={3} />
        </div>
      </Section>
    </>
  );
}

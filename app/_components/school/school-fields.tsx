import { LOCALES, TIME_ZONES, type SchoolFields } from '@/lib/people/school-fields';
import { FormChoices } from '../form/form-choices';
import { FormLine, FormSelect, FormText } from '../form/form-fields';

/** What is asked about a school, in the first run and when it is changed; `values` stands in the fields at first. */
export type SchoolValues = Partial<SchoolFields>;

export function SchoolNameFields({ values }: { readonly values: SchoolValues }) {
  return (
    <>
      <FormLine name="schoolName" label="Name of the school" autoComplete="organization" value={values.schoolName} />
      <FormText name="schoolAddress" label="Address for the fire service" hint="As a caller would say it: street, number, town, and which gate." rows={3} autoComplete="street-address" value={values.schoolAddress} />
    </>
  );
}

export function EmergencyFields({ values }: { readonly values: SchoolValues }) {
  return (
    <>
      <FormLine name="emergencyNumber" label="Number to call when there is a fire" hint="As you dial it from a mobile telephone at your school. It is shown large in an emergency." type="tel" inputMode="tel" autoComplete="off" value={values.emergencyNumber} />
      <FormLine name="meetingPlace" label="Where everybody meets outside" hint="Away from the building and from where fire engines arrive." value={values.meetingPlace} />
      <FormLine name="secondMeetingPlace" label="Second meeting place, if smoke drifts to the first" hint="Leave it empty if there is none yet." value={values.secondMeetingPlace ?? undefined} />
      <FormLine name="officerPhone" label="Telephone of the safety officer" hint="Shown to whoever finds a swollen pack. Leave it empty if it should not stand there." type="tel" inputMode="tel" autoComplete="off" value={values.officerPhone ?? undefined} />
    </>
  );
}

export function WritingFields({ values }: { readonly values: SchoolValues }) {
  return (
    <>
      <FormChoices name="units" legend="Units" value={values.units} options={[{ value: 'metric', label: 'Metric', hint: 'metres, °C' }, { value: 'us', label: 'US customary', hint: 'feet, °F' }]} />
      <FormChoices name="paper" legend="Paper" value={values.paper} options={[{ value: 'A4', label: 'A4' }, { value: 'Letter', label: 'US Letter' }]} />
      <FormSelect name="locale" label="Dates and numbers as in" value={values.locale} options={LOCALE_OPTIONS} />
      <FormSelect name="timeZone" label="Time zone" hint="It says when a day ends at your school." value={values.timeZone} options={ZONE_OPTIONS} />
    </>
  );
}

const NAMES = new Intl.DisplayNames('en-GB', { type: 'language', languageDisplay: 'standard' });
const LOCALE_OPTIONS = LOCALES.map((locale) => ({ value: locale, label: `${NAMES.of(locale) ?? locale}: ${example(locale)}` }));

const ZONE_OPTIONS = TIME_ZONES.map((zone) => ({ value: zone, label: zone.replaceAll('_', ' ') }));

/** A date that cannot be read two ways, and a number with both of its signs. */
function example(locale: string): string {
  const date = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(Date.UTC(2026, 10, 25));
  return `${date}, ${new Intl.NumberFormat(locale).format(1234.5)}`;
}

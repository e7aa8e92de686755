import { z } from 'zod';
import { line, oneOf, optional, optionalLine } from '@/lib/forms/fields';

export const UNITS = ['metric', 'us'] as const;
export const PAPERS = ['A4', 'Letter'] as const;
/** Languages and places whose dates and numbers the program writes. The words are British English in all of them. */
export const LOCALES = ['en-GB', 'en-US', 'en-AU', 'en-CA', 'en-IE', 'en-IN', 'en-NZ', 'en-ZA', 'de-DE', 'fr-FR', 'es-ES', 'it-IT', 'nl-NL', 'pl-PL', 'sv-SE'] as const;

/** As it is dialled from the school: digits, perhaps with a plus, spaces, brackets or hyphens. */
const DIALLED = /^\+?[\d(][\d\s()/.-]{1,24}$/;
const CHOOSE_ZONE = 'Choose the time zone of your school';
const WRONG_NUMBER = 'Write the number as you would dial it, digits only, such as the one on your school’s notice';

function telephone(missing: string) {
  return line(missing, 30).pipe(z.string().regex(DIALLED, WRONG_NUMBER));
}

/** Zones the system knows, by their IANA names; UTC is not among those it lists. */
export const TIME_ZONES: readonly string[] = ['UTC', ...Intl.supportedValuesOf('timeZone')];

/** What is asked about a school, when it is made and when it is changed. */
export const SCHOOL_FIELDS = {
  schoolName: line('Enter the name of your school'),
  schoolAddress: line('Write the address, as you would say it to the fire service', 400),
  emergencyNumber: telephone('Write the number you call when there is a fire'),
  meetingPlace: line('Write where everybody meets when the building is left'),
  secondMeetingPlace: optionalLine(),
  officerPhone: optional(telephone('')),
  units: oneOf(UNITS, 'Choose the units you measure in'),
  paper: oneOf(PAPERS, 'Choose the paper you print on'),
  locale: oneOf(LOCALES, 'Choose how dates and numbers are written'),
  timeZone: z.string({ error: CHOOSE_ZONE }).refine((zone) => TIME_ZONES.includes(zone), CHOOSE_ZONE),
};

export const SchoolFieldsSchema = z.object(SCHOOL_FIELDS);
export type SchoolFields = z.output<typeof SchoolFieldsSchema>;

/** A change of a school; `revision` is of the state the form was filled from. */
export const SchoolChangeSchema = SchoolFieldsSchema.extend({ revision: z.coerce.number().int() });
export type SchoolChange = z.output<typeof SchoolChangeSchema>;

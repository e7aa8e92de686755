import { LOCALES, type PAPERS, type UNITS } from './school-fields';

export interface SchoolDefaults {
  readonly locale: (typeof LOCALES)[number];
  readonly units: (typeof UNITS)[number];
  readonly paper: (typeof PAPERS)[number];
}

/** Where the paper is US Letter by habit; of these only the first measures in US customary units. */
const US_UNITS = 'en-US';
const LETTER: readonly string[] = [US_UNITS, 'en-CA'];

/**
 * Returns what to offer first, from the languages a browser asks for (`Accept-Language`, best first). Only a
 * suggestion: everything can be changed in the form.
 */
export function schoolDefaults(acceptLanguage: string | null): SchoolDefaults {
  const asked = (acceptLanguage ?? '').split(',').map((part) => part.split(';')[0]?.trim() ?? '');
  const exact = LOCALES.find((locale) => asked.includes(locale));
  const [first = ''] = asked;
  const locale = exact ?? LOCALES.find((known) => first !== '' && known.startsWith(`${first.slice(0, 2)}-`)) ?? 'en-GB';
  return { locale, units: locale === US_UNITS ? 'us' : 'metric', paper: LETTER.includes(locale) ? 'Letter' : 'A4' };
}

/** Years that the school's own certificate lasts. */
export const AUTHORITY_YEARS = 10;
/** Years that a person's certificate lasts; never longer than the school's that vouches for it. */
export const PERSON_YEARS = 2;
/** Clocks differ: a certificate is good from a little before it was made. */
const BACKDATED_MS = 60 * 60 * 1000;
/** So long before the end it is time for a new one, days. */
const SOON_DAYS = 30;
const DAY_MS = 24 * 60 * 60 * 1000;

export interface Validity { readonly from: Date; readonly until: Date }

export type ValidityState = 'not-yet' | 'in-force' | 'ends-soon' | 'ended';

/** So many years from now on, whole seconds, ending with `latest` if that comes first. */
export function validityFrom(now: Date, years: number, latest?: Date): Validity {
  const until = new Date(now);
  until.setUTCFullYear(until.getUTCFullYear() + years);
  until.setUTCMilliseconds(0);
  const from = new Date(now.getTime() - BACKDATED_MS);
  from.setUTCMilliseconds(0);
  return { from, until: latest !== undefined && latest < until ? latest : until };
}

/**
 * Where a time lies in a certificate's life. A person signs only with one that is in force; `ends-soon` still is,
 * and the next signature is the moment for a new one. Nothing that was signed changes when a certificate ends.
 */
export function validityState({ from, until }: Validity, now: Date): ValidityState {
  if (now < from) return 'not-yet';
  if (now > until) return 'ended';
  return until.getTime() - now.getTime() < SOON_DAYS * DAY_MS ? 'ends-soon' : 'in-force';
}

/** Whether a new certificate is to be made before the next signature. */
export function needsNewCertificate(validity: Validity, now: Date): boolean {
  return validityState(validity, now) !== 'in-force';
}

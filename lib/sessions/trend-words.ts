import type { Trend } from './trend';

const TENTHS = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });
/** Charges that a rate is told for; a single charge is too small to be read. */
export const PER = 1000;

/** A rate as it is told: "2.6". */
export function perThousand(rate: number): string {
  return TENTHS.format(rate * PER);
}

/** "2.6 (between 0.5 and 7.7)", or that nothing was charged. */
export function rateWords({ rate }: Pick<Trend, 'rate'>): string {
  return rate === null ? 'no charge is logged yet' : `${perThousand(rate.value)} (between ${perThousand(rate.limits.low)} and ${perThousand(rate.limits.high)})`;
}

/** What the record says, in one sentence; the title of the page. */
export function findingTitle({ finding }: Pick<Trend, 'finding'>): string {
  switch (finding) {
    case 'nothing': return 'No charge is logged yet';
    case 'too few': return 'Too few charges to tell good from bad luck';
    case 'steady': return 'No fortnight stands out from chance';
    case 'above': return 'A fortnight stands out: look at it';
  }
}

/** What to make of it. */
export function findingWords({ finding }: Pick<Trend, 'finding'>): string {
  switch (finding) {
    case 'nothing': return 'Log the packs charged at each session. A rate needs both what went wrong and how often it could have.';
    case 'too few': return 'A fortnight without an incident shows nothing yet, and one with an incident shows no trend. Look at each incident by itself.';
    case 'steady': return 'What is to be seen can be chance alone. That does not make it acceptable: look at each incident by itself.';
    case 'above': return 'More happened there than chance explains at this rate. Look for what was different: packs, chargers, people, weather.';
  }
}

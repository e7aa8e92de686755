import type { Scenario } from '@/lib/content/model';
import type { RecordedExposure } from '@/lib/core/document';
import type { Facts } from './facts';
import { LIKELY_RISKS, likelyRisk } from './likely-risk';

/** What the record takes of an incident. */
export interface CountedIncident {
  readonly facts: Pick<Facts, 'when' | 'doing' | 'kinds'>;
  /** as the officer said: a scenario's id, `none`, or null when not said yet */
  readonly risk: string | null;
}

/** What was logged in a period, by the content's exposure base (watchedCharges, flights, sessions …). */
export interface LoggedExposure {
  readonly from: Date;
  readonly to: Date;
  readonly byBase: Readonly<Record<string, number>>;
}

/**
 * The school's own record for the engine, by scenario: events seen in the logged exposure, in the scenario's own unit.
 * A scenario whose exposure nobody logged is left out, events or not: no rate follows from it. One without events is
 * kept when the incident form by itself would have named it, since not having burned in 3,000 charges is knowledge too;
 * of one that nobody writes down, such as a stumble, no event is no knowledge. Incidents outside of the period do not
 * count.
 */
export function recordForEngine(scenarios: readonly Pick<Scenario, 'id' | 'exposureBase'>[], incidents: readonly CountedIncident[], logged: LoggedExposure): Readonly<Record<string, RecordedExposure>> {
  const counted = incidents.filter(({ facts }) => isWithin(new Date(facts.when.at), logged)).map(({ facts, risk }) => risk ?? likelyRisk(facts));
  return Object.fromEntries(
    scenarios.flatMap(({ id, exposureBase }) => {
      const exposure = logged.byBase[exposureBase] ?? 0;
      const events = counted.filter((risk) => risk === id).length;
      return exposure > 0 && (events > 0 || LIKELY_RISKS.includes(id)) ? [[id, { events, exposure }] as const] : [];
    }),
  );
}

function isWithin(at: Date, { from, to }: LoggedExposure): boolean {
  return at.getTime() >= from.getTime() && at.getTime() <= to.getTime();
}

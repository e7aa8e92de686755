import type { Fault } from '@/lib/forms/form-state';
import type { Facts } from './facts';
import { type FormClock, readFacts } from './read-facts';
import { type Affected, readPersons } from './read-persons';

/** What the form of a new record holds. */
export interface NewIncident {
  /** made by the form, so that a second sending is known to be that */
  readonly clientKey: string;
  readonly facts: Facts;
  readonly persons: readonly Affected[];
}

/** Reads the whole form, with every fault at once. */
export function readIncident(raw: Readonly<Record<string, unknown>>, clock: FormClock): { readonly ok: true; readonly incident: NewIncident } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const facts = readFacts(raw, clock);
  const persons = readPersons(raw);
  const { clientKey } = raw;
  if (typeof clientKey !== 'string' || clientKey.length < 8 || clientKey.length > 64) throw new Error('The form has lost its key');
  if (facts.ok && persons.ok) return { ok: true, incident: { clientKey, facts: facts.value, persons: persons.value } };
  return { ok: false, faults: [...(facts.ok ? [] : facts.faults), ...(persons.ok ? [] : persons.faults)] };
}

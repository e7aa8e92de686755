import type { FactName, Facts, PackOfIncident } from './facts';
import { type Decision, type IncidentStanding, NOT_OPEN } from './standing';

interface Corrected {
  readonly field: FactName;
  readonly before: unknown;
  readonly after: unknown;
  /** packs that were not named before; they are isolated like the others */
  readonly packsAdded: readonly PackOfIncident[];
}

/** A fact is said anew. What was said first stays, and so does a pack's isolation: only the officer releases a pack. */
export function correctIncident<Name extends FactName>({ state, facts }: Pick<IncidentStanding, 'state' | 'facts'>, field: Name, after: Facts[Name]): Decision<Corrected> {
  if (state === 'closed') return { ok: false, why: [NOT_OPEN] };
  const before = facts[field];
  if (likeness(before) === likeness(after)) return { ok: false, why: ['Nothing is different'] };
  return { ok: true, change: { field, before, after, packsAdded: field === 'packs' ? packsAdded(facts.packs, after as Facts['packs']) : [] } };
}

/** New to the record, or named as nearby before and known to have taken part now. */
function packsAdded(before: Facts['packs'], after: Facts['packs']): readonly PackOfIncident[] {
  return after.filter(({ label, part }) => !before.some((known) => known.label.toLowerCase() === label.toLowerCase() && (known.part === part || part === 'nearby')));
}

/** The order of a list says nothing. */
function likeness(value: unknown): string {
  return JSON.stringify(Array.isArray(value) ? value.map((one) => JSON.stringify(one)).sort() : value);
}

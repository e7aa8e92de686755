import type { Venue } from '@/lib/core/answers/venue';
import { at } from '@/lib/core/at';
import { type Candidate, inPlace } from './candidates';
import type { RiskSetup } from './risk-setup';
import { severityCase } from './severity';

/**
 * Which candidates can have a say in how bad each path is: those whose own state its severity looks at, or
 * an input that they move. What a severity looks at is watched, today and with every candidate in place,
 * rather than listed a second time beside the rules.
 * @returns ids of controls, for each path, all scenarios in order
 */
export function severityReads(setup: RiskSetup, candidates: readonly Candidate[]): readonly ReadonlySet<string>[] {
  const venues = [setup.venue, inPlace(setup.venue, candidates.map((candidate) => candidate.control))];
  const branches = setup.compiled.scenarios.flatMap((scenario) => scenario.branches);
  return branches.map(({ branch }) => {
    const looked = new Set<string>();
    for (const venue of venues) severityCase(watched(venue, looked), setup.physics, branch.severity);
    return new Set(candidates.filter((candidate) => hasSay(setup, candidate, looked)).map((candidate) => candidate.control));
  });
}

function hasSay(setup: RiskSetup, candidate: Candidate, looked: ReadonlySet<string>): boolean {
  const moves = at(setup.compiled.controls, candidate.index).moves ?? [];
  return looked.has(candidate.control) || moves.some((move) => looked.has(move.input));
}

/** The same venue, noting every input and every control that is looked at. */
function watched(venue: Venue, looked: Set<string>): Venue {
  return { ...venue, inputs: new Watched(venue.inputs, looked), states: new Watched(venue.states, looked) };
}

class Watched<V> extends Map<string, V> {
  constructor(entries: ReadonlyMap<string, V>, private readonly looked: Set<string>) {
    super(entries);
  }

  override get(id: string): V | undefined {
    this.looked.add(id);
    return super.get(id);
  }
}

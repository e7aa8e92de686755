import { stateOf, type Venue } from '@/lib/core/answers/venue';
import type { PhysicsModel } from '@/lib/core/physics-model';
import type { CompiledContent } from './compiled-content';
import { severityCase, type SeverityCase } from './severity';

/** Controls that decide how many packs burn, and with it how bad a branch is (packCountRule). */
const CONTAINERS = ['charge-box', 'charge-bag', 'store-lots', 'damaged-apart', 'travel-box'] as const;

/**
 * Severity case of every branch, by scenario and branch. Severities hang on the inputs and on the
 * containers alone, so venues that differ in other controls share one list.
 */
export class SeverityCases {
  private readonly known = new Map<Venue['inputs'], Map<string, readonly (readonly SeverityCase[])[]>>();
  constructor(private readonly compiled: CompiledContent, private readonly physics: PhysicsModel) {}

  of(venue: Venue): readonly (readonly SeverityCase[])[] {
    const byContainers = this.known.get(venue.inputs) ?? new Map<string, readonly (readonly SeverityCase[])[]>();
    this.known.set(venue.inputs, byContainers);
    const key = CONTAINERS.map((control) => stateOf(venue, control)).join();
    const cases = byContainers.get(key) ?? this.compiled.scenarios.map(({ branches }) => branches.map(({ branch }) => severityCase(venue, this.physics, branch.severity)));
    byContainers.set(key, cases);
    return cases;
  }
}

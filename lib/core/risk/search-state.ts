import { type Candidate, inPlace } from './candidates';
import { countedUses, effectiveFailure } from './counted-uses';
import { failuresOf, type RiskSetup } from './risk-setup';
import { evaluateClosed } from './closed-form';
import { severityCase } from './severity';

/** What a candidate does on one path: a factor of its own, or a member of a group whose best alone counts. */
interface Effect {
  readonly path: number;
  /** slot of the group's standing on this path, −1 when the control stands alone */
  readonly slot: number;
  /** mean effective failure in place */
  readonly after: number;
  /** today's, for a control that stands alone */
  readonly before: number;
}

/**
 * The closed total harm while controls join and leave one by one: each step touches only the paths it
 * changes, so that a search can afford many thousands of them.
 */
export class SearchState {
  harm: number;
  private readonly pathHarm: Float64Array;
  /** mean effective failure of the member that counts, per group and path */
  private readonly standing: number[] = [];
  private readonly effects: readonly (readonly Effect[])[];
  private readonly containment: Containment;
  private readonly trail: { readonly harm: number; readonly paths: readonly (readonly [number, number])[]; readonly slots: readonly (readonly [number, number])[]; readonly index: number }[] = [];

  constructor(setup: RiskSetup, private readonly candidates: readonly Candidate[]) {
    const closed = evaluateClosed(setup, setup.venue);
    this.pathHarm = Float64Array.from(closed.risks.flatMap((risk) => risk.branches.map((branch) => branch.harm)));
    this.harm = closed.totalHarm;
    this.effects = this.effectsOf(setup);
    this.containment = new Containment(setup, candidates);
  }

  effortOf(index: number): number { return this.candidates[index]?.effort ?? Number.POSITIVE_INFINITY; }

  /** Sort key for ties: ids in order. */
  idsOf(chosen: readonly number[]): string { return chosen.map((index) => this.candidates[index]?.control ?? '').sort().join(' '); }

  /** Fall of total harm if this candidate joined now, 0 or more. */
  gainOf(index: number): number {
    let gain = 0;
    const weights = this.containment.changesBy(index);
    for (const effect of this.effects[index] ?? []) {
      const harm = this.pathHarm[effect.path] as number;
      gain += harm * (1 - this.ratioOf(effect) * (weights?.get(effect.path) ?? 1));
    }
    if (weights !== null) {
      const touched = new Set((this.effects[index] ?? []).map((effect) => effect.path));
      for (const [path, ratio] of weights) if (!touched.has(path)) gain += (this.pathHarm[path] as number) * (1 - ratio);
    }
    return gain;
  }

  join(index: number): void {
    const paths: [number, number][] = [];
    const slots: [number, number][] = [];
    const before = this.harm;
    const change = (path: number, ratio: number): void => {
      const harm = this.pathHarm[path] as number;
      paths.push([path, harm]);
      this.pathHarm[path] = harm * ratio;
      this.harm -= harm * (1 - ratio);
    };
    const weights = this.containment.changesBy(index);
    for (const effect of this.effects[index] ?? []) {
      change(effect.path, this.ratioOf(effect));
      if (effect.slot < 0) continue;
      slots.push([effect.slot, this.standing[effect.slot] as number]);
      this.standing[effect.slot] = Math.min(this.standing[effect.slot] as number, effect.after);
    }
    if (weights !== null) for (const [path, ratio] of weights) change(path, ratio);
    this.containment.join(index);
    this.trail.push({ harm: before, paths, slots, index });
  }

  /** ln of the ratio by which this candidate would change each path it touches, at the present standing. */
  logRatiosOf(index: number): readonly (readonly [number, number])[] {
    const logs = new Map<number, number>();
    const add = (path: number, ratio: number): void => { if (ratio !== 1) logs.set(path, (logs.get(path) ?? 0) + Math.log(ratio)); };
    for (const effect of this.effects[index] ?? []) add(effect.path, this.ratioOf(effect));
    for (const [path, ratio] of this.containment.changesBy(index) ?? []) add(path, ratio);
    return [...logs];
  }

  /** Harm of every path as it stands; a copy. */
  pathHarms(): Float64Array { return this.pathHarm.slice(); }

  /** Takes back the last join, to the last digit. */
  undo(): void {
    const last = this.trail.pop();
    if (last === undefined) throw new Error('nothing to take back');
    for (const [path, harm] of [...last.paths].reverse()) this.pathHarm[path] = harm;
    for (const [slot, value] of [...last.slots].reverse()) this.standing[slot] = value;
    this.containment.leave(last.index);
    this.harm = last.harm;
  }

  private ratioOf(effect: Effect): number {
    if (effect.slot < 0) return effect.after / effect.before;
    const standing = this.standing[effect.slot] as number;
    return Math.min(standing, effect.after) / standing;
  }

  private effectsOf(setup: RiskSetup): readonly (readonly Effect[])[] {
    const { compiled } = setup;
    const failure = failuresOf(compiled, setup.venue);
    const positionOf = new Map(this.candidates.map((candidate, position) => [candidate.index, position]));
    const effects: Effect[][] = this.candidates.map(() => []);
    const slots = new Map<string, number>();
    let path = -1;
    for (const { branches } of compiled.scenarios) for (const { path: uses } of branches) {
      path += 1;
      const counted = new Set(countedUses(uses, failure, compiled.controls));
      uses.forEach((use) => {
        const position = positionOf.get(use.control);
        if (position === undefined) return;
        const after = effectiveFailure(use.reach, compiled.failures.of(use.control, 'in place'));
        const before = effectiveFailure(use.reach, failure[use.control] ?? 1);
        effects[position]?.push({ path, slot: use.group < 0 ? -1 : this.slotOf(slots, path, use.group), after, before });
      });
      for (const position of counted) {
        const use = uses[position];
        const slot = use === undefined || use.group < 0 ? undefined : slots.get(`${path} ${use.group}`);
        if (use !== undefined && slot !== undefined) this.standing[slot] = effectiveFailure(use.reach, failure[use.control] ?? 1);
      }
    }
    return effects;
  }

  private slotOf(slots: Map<string, number>, path: number, group: number): number {
    const key = `${path} ${group}`;
    const slot = slots.get(key) ?? slots.size;
    slots.set(key, slot);
    this.standing[slot] ??= 1;
    return slot;
  }
}

/** Controls that decide how many packs burn, and with it how bad a branch is (packCountRule). */
const CONTAINERS = ['charge-box', 'charge-bag', 'store-lots', 'damaged-apart', 'travel-box'] as const;

/** Expected harm weights of every path for each combination of containers that have joined. */
class Containment {
  private mask = 0;
  private readonly bitOf: ReadonlyMap<number, number>;
  private readonly known = new Map<number, Float64Array>();

  constructor(private readonly setup: RiskSetup, private readonly candidates: readonly Candidate[]) {
    const bits = new Map<number, number>();
    candidates.forEach((candidate, position) => { if (CONTAINERS.some((one) => one === candidate.control)) bits.set(position, 1 << bits.size); });
    this.bitOf = bits;
  }

  join(index: number): void { this.mask |= this.bitOf.get(index) ?? 0; }
  leave(index: number): void { this.mask &= ~(this.bitOf.get(index) ?? 0); }

  /** Ratio of expected weights on each path that this candidate would change, null when it changes none. */
  changesBy(index: number): ReadonlyMap<number, number> | null {
    const bit = this.bitOf.get(index);
    if (bit === undefined || (this.mask & bit) !== 0) return null;
    const before = this.weights(this.mask);
    const after = this.weights(this.mask | bit);
    const changes = new Map<number, number>();
    before.forEach((weight, path) => { if (after[path] !== weight) changes.set(path, (after[path] as number) / weight); });
    return changes;
  }

  private weights(mask: number): Float64Array {
    const known = this.known.get(mask);
    if (known !== undefined) return known;
    const joined = [...this.bitOf].filter(([, bit]) => (mask & bit) !== 0).map(([position]) => this.candidates[position]?.control ?? '');
    const venue = inPlace(this.setup.venue, joined);
    const made = Float64Array.from(this.setup.compiled.scenarios.flatMap(({ branches }) =>
      branches.map(({ branch }) => this.setup.severities.of(severityCase(venue, this.setup.physics, branch.severity)).expectedWeight)));
    this.known.set(mask, made);
    return made;
  }
}

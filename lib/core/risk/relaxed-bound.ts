import { at } from '@/lib/core/at';
import type { SearchState } from './search-state';

/** One candidate at a node of the search. */
export interface Open { readonly index: number; readonly effort: number; readonly gain: number }

/** Steps of the descent; each may only tighten the bound, so their number is a matter of speed alone. */
const STEPS = 24;

/**
 * A total harm that no set of these candidates within this effort can get below. Let candidates join by
 * fractions x: each path's harm is H·exp(Σ ln(ratio)·x), which is convex and, because two of one group or
 * two containers together never do more than the product of both, never above the true harm. Frank and
 * Wolfe's method (Naval Research Logistics Quarterly 3, 1956) walks towards its least value over the
 * budget, and at every step the tangent gives a valid bound.
 * @param enough stop as soon as the bound is above this
 */
export function relaxedBound(state: SearchState, open: readonly Open[], effort: number, enough: number): number {
  const relaxed = new Relaxed(state, open);
  let bound = Number.NEGATIVE_INFINITY;
  for (let step = 0; step < STEPS; step += 1) {
    const value = relaxed.valueAndSlopes();
    const corner = relaxed.cheapestCorner(effort);
    bound = Math.max(bound, value + relaxed.slopeTowards(corner));
    if (bound > enough) return bound;
    relaxed.moveTowards(corner, 2 / (step + 2));
  }
  return bound;
}

class Relaxed {
  private readonly share: Float64Array;
  private readonly slope: Float64Array;
  private readonly harm: Float64Array;
  private readonly exponent: Float64Array;
  private readonly logs: readonly (readonly (readonly [number, number])[])[];

  constructor(state: SearchState, private readonly open: readonly Open[]) {
    this.share = new Float64Array(open.length);
    this.slope = new Float64Array(open.length);
    this.logs = open.map((one) => state.logRatiosOf(one.index));
    this.harm = state.pathHarms();
    this.exponent = new Float64Array(this.harm.length);
  }

  /** Total harm at the present shares; leaves the slope of each candidate behind. */
  valueAndSlopes(): number {
    this.exponent.fill(0);
    this.logs.forEach((list, candidate) => {
      const share = this.share[candidate] as number;
      if (share > 0) for (const [path, log] of list) this.exponent[path] = (this.exponent[path] as number) + log * share;
    });
    let total = 0;
    for (let path = 0; path < this.harm.length; path += 1) {
      const exponent = this.exponent[path] as number;
      const harm = exponent === 0 ? (this.harm[path] as number) : (this.harm[path] as number) * Math.exp(exponent);
      this.exponent[path] = harm;
      total += harm;
    }
    this.logs.forEach((list, candidate) => {
      let slope = 0;
      for (const [path, log] of list) slope += log * (this.exponent[path] as number);
      this.slope[candidate] = slope;
    });
    return total;
  }

  /** Where the tangent is lowest within the budget of effort: the steepest by effort first, the last by a fraction. */
  cheapestCorner(budget: number): Float64Array {
    const order = this.open.map((_, candidate) => candidate).sort((one, other) => this.steepness(one) - this.steepness(other));
    const corner = new Float64Array(this.open.length);
    let left = budget;
    for (const candidate of order) {
      if (left <= 0 || (this.slope[candidate] as number) >= 0) break;
      const { effort } = at(this.open, candidate);
      const part = Math.min(1, left / effort);
      corner[candidate] = part;
      left -= part * effort;
    }
    return corner;
  }

  slopeTowards(corner: Float64Array): number {
    return this.slope.reduce((sum, slope, candidate) => sum + slope * ((corner[candidate] as number) - (this.share[candidate] as number)), 0);
  }

  moveTowards(corner: Float64Array, step: number): void {
    for (let candidate = 0; candidate < this.share.length; candidate += 1) {
      this.share[candidate] = (this.share[candidate] as number) + step * ((corner[candidate] as number) - (this.share[candidate] as number));
    }
  }

  private steepness(candidate: number): number { return (this.slope[candidate] as number) / at(this.open, candidate).effort; }
}

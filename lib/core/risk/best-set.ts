import { type Candidate, candidatesOf, inPlace } from './candidates';
import { evaluateClosed } from './closed-form';
import { type Open, relaxedBound } from './relaxed-bound';
import type { RiskSetup } from './risk-setup';
import { SearchState } from './search-state';

export interface ChosenSet {
  readonly budget: number;
  /** ids in order */
  readonly controls: readonly string[];
  readonly effort: number;
  readonly harmBefore: number;
  readonly harmAfter: number;
  /** branches of the search that were opened */
  readonly nodes: number;
}

/** Harms closer than this share of today's are equal; then less effort wins, then ids in order (A26). */
const TIE = 1e-9;
/** With fewer open candidates than this, opening them costs less than the tight bound. */
const TIGHT_FROM = 3;

/**
 * The set of controls that leaves the least mean harm within a budget of effort, found exactly by depth-first
 * branch and bound. The quick bound fills the budget with fractions of the best remaining candidates at
 * their gains here and now (gains never grow as others join), the tight one relaxes the whole problem: no
 * better and no equal set is ever cut.
 * @param budget effort points, 0 or more
 */
export function bestSet(setup: RiskSetup, budget: number, candidates: readonly Candidate[] = candidatesOf(setup.venue)): ChosenSet {
  const search = new Search(new SearchState(setup, candidates), budget);
  search.open(candidates.map((_, index) => index), budget, 0);
  const controls = search.best.map((index) => candidates[index]?.control ?? '').sort();
  return {
    budget,
    controls,
    effort: search.bestEffort,
    harmBefore: evaluateClosed(setup, setup.venue).totalHarm,
    harmAfter: evaluateClosed(setup, inPlace(setup.venue, controls)).totalHarm,
    nodes: search.nodes,
  };
}

class Search {
  best: readonly number[] = [];
  bestEffort = 0;
  nodes = 0;
  private bestHarm: number;
  private readonly tie: number;
  private readonly chosen: number[] = [];

  constructor(private readonly state: SearchState, private readonly budget: number) {
    this.bestHarm = state.harm;
    this.tie = state.harm * TIE;
  }

  /**
   * @param open candidates that may still join, by index
   * @param left effort that is left
   * @param spent effort of those that have joined
   */
  open(open: readonly number[], left: number, spent: number): void {
    this.nodes += 1;
    this.keepIfBetter(spent);
    let remaining = this.worthwhile(open, left);
    while (remaining.length > 0) {
      if (this.hopeless(remaining, left)) return;
      const [next, ...rest] = remaining;
      if (next === undefined) return;
      this.state.join(next.index);
      this.chosen.push(next.index);
      this.open(rest.map((one) => one.index), left - next.effort, spent + next.effort);
      this.chosen.pop();
      this.state.undo();
      remaining = rest;
    }
  }

  private worthwhile(open: readonly number[], left: number): Open[] {
    return open
      .map((index) => ({ index, effort: this.state.effortOf(index), gain: this.state.gainOf(index) }))
      .filter((one) => one.effort <= left && one.gain > 0)
      .sort((one, other) => other.gain / other.effort - one.gain / one.effort || one.index - other.index);
  }

  /** Whether nothing open can beat or equal the best found; the quick bound first, the tight one when it fails. */
  private hopeless(open: readonly Open[], left: number): boolean {
    const enough = this.bestHarm + this.tie;
    if (this.state.harm - this.quickBound(open, left) > enough) return true;
    return open.length > TIGHT_FROM && relaxedBound(this.state, open, left, enough) > enough;
  }

  private quickBound(ranked: readonly Open[], left: number): number {
    let room = left;
    let gain = 0;
    for (const one of ranked) {
      if (one.effort >= room) return gain + (one.gain * room) / one.effort;
      gain += one.gain;
      room -= one.effort;
    }
    return gain;
  }

  private keepIfBetter(spent: number): void {
    const harm = this.state.harm;
    if (harm > this.bestHarm + this.tie) return;
    const equal = Math.abs(harm - this.bestHarm) <= this.tie;
    if (equal && !this.simpler(spent)) return;
    this.best = [...this.chosen];
    this.bestEffort = spent;
    this.bestHarm = harm;
  }

  private simpler(spent: number): boolean {
    if (spent !== this.bestEffort) return spent < this.bestEffort;
    return this.state.idsOf(this.chosen) < this.state.idsOf(this.best);
  }
}

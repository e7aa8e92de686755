import { at } from '@/lib/core/at';
import { type Candidate, candidatesOf, inPlace } from './candidates';
import { evaluateClosed } from './closed-form';
import { type Open, relaxedBound } from './relaxed-bound';
import type { RiskSetup } from './risk-setup';
import { SearchState } from './search-state';

interface ChosenSet {
  readonly budget: number;
  /** ids in order */
  readonly controls: readonly string[];
  readonly effort: number;
  readonly harmBefore: number;
  readonly harmAfter: number;
  /** branches of the search that were opened */
  readonly nodes: number;
  /** false when the search was given up, so that a better set may exist */
  readonly complete: boolean;
}

/** Harms closer than this share of today's are equal; then less effort wins, then ids in order (A26). */
const TIE = 1e-9;
/**
 * So many branches are opened at most. Rooms take tens to some thousand; only where one risk swamps all others
 * by nine digits do sets differ by less than a tie, and then nobody could wait for the end.
 */
const MOST_NODES = 10_000;
/** With fewer open candidates than this, opening them costs less than the tight bound. */
const TIGHT_FROM = 3;

/**
 * The set of controls that leaves the least mean harm within a budget of effort, found exactly by depth-first
 * branch and bound. The quick bound fills the budget with fractions of the best remaining candidates at
 * their gains here and now (gains never grow as others join), the tight one relaxes the whole problem: no
 * better and no equal set is ever cut. Candidates whose effects are no products are settled first, while
 * the bound takes the severities of those still open for granted. The search ends after a fixed number of
 * branches, the same everywhere.
 * @param budget effort points, 0 or more
 */
export function bestSet(setup: RiskSetup, budget: number, candidates: readonly Candidate[] = candidatesOf(setup.venue)): ChosenSet {
  const state = new SearchState(setup, candidates);
  const search = new Search(state);
  const entangled = state.entangled;
  const free = candidates.map((_, index) => index).filter((index) => !entangled.includes(index));
  search.begin(candidates.map((_, index) => index), budget, 0);
  search.settle(entangled, free, budget, 0);
  const controls = search.best.map((index) => at(candidates, index).control).sort();
  return {
    budget,
    controls,
    effort: search.bestEffort,
    harmBefore: evaluateClosed(setup, setup.venue).totalHarm,
    harmAfter: evaluateClosed(setup, inPlace(setup.venue, controls)).totalHarm,
    nodes: search.nodes,
    complete: search.nodes < MOST_NODES,
  };
}

class Search {
  best: readonly number[] = [];
  bestEffort = 0;
  nodes = 0;
  private bestHarm: number;
  private readonly tie: number;
  private readonly chosen: number[] = [];

  constructor(private readonly state: SearchState) {
    this.bestHarm = state.harm;
    this.tie = state.harm * TIE;
  }

  /** A good set to begin with, so that most of what is worse is never opened: the best by effort, one after another. */
  begin(open: readonly number[], left: number, spent: number): void {
    this.keepIfBetter(spent);
    const [best] = this.worthwhile(open, left);
    if (best === undefined) return;
    this.joining(best.index, (effort) => this.begin(open.filter((index) => index !== best.index), left - effort, spent + effort));
  }

  /**
   * Settles the entangled one by one, in and then out, and searches the free ones under each combination.
   * @param entangled still to be settled, by index
   * @param free all others
   * @param left effort that is left
   * @param spent effort of those that have joined
   */
  settle(entangled: readonly number[], free: readonly number[], left: number, spent: number): void {
    if (this.nodes >= MOST_NODES) return;
    const affordable = entangled.filter((index) => this.state.effortOf(index) <= left);
    const [next, ...rest] = affordable;
    if (next === undefined) { this.open(free, left, spent); return; }
    this.nodes += 1;
    if (this.hopelessWhateverIsSettled(affordable, free, left, spent)) return;
    this.joining(next, (effort) => this.settle(rest, free, left - effort, spent + effort));
    this.settle(rest, free, left, spent);
  }

  /** @param open candidates that may still join, by index */
  private open(open: readonly number[], left: number, spent: number): void {
    if (this.nodes >= MOST_NODES) return;
    this.nodes += 1;
    this.keepIfBetter(spent);
    let remaining = this.worthwhile(open, left);
    while (remaining.length > 0) {
      if (this.hopeless(remaining, left, spent + Math.min(...remaining.map((one) => one.effort)))) return;
      const [next, ...rest] = remaining;
      if (next === undefined) return;
      this.joining(next.index, (effort) => this.open(rest.map((one) => one.index), left - effort, spent + effort));
      remaining = rest;
    }
  }

  private joining(index: number, then: (effort: number) => void): void {
    this.state.join(index);
    this.chosen.push(index);
    then(this.state.effortOf(index));
    this.chosen.pop();
    this.state.undo();
  }

  private hopelessWhateverIsSettled(entangled: readonly number[], free: readonly number[], left: number, spent: number): boolean {
    this.state.grant(entangled);
    const hopeless = this.hopeless(this.worthwhile([...entangled, ...free], left), left, spent);
    this.state.undo();
    return hopeless;
  }

  private worthwhile(open: readonly number[], left: number): Open[] {
    return open
      .map((index) => ({ index, effort: this.state.effortOf(index), gain: this.state.gainOf(index) }))
      .filter((one) => one.effort <= left && one.gain > 0)
      .sort((one, other) => other.gain / other.effort - one.gain / one.effort || one.index - other.index);
  }

  /**
   * Whether nothing open can beat or equal the best found; the quick bound first, the tight one when it fails.
   * What costs more than the best found has to be truly better: an equal harm would not make it the choice.
   * @param least effort that any of the sets still to be looked at takes
   */
  private hopeless(open: readonly Open[], left: number, least: number): boolean {
    const enough = least > this.bestEffort ? this.bestHarm - this.tie : this.bestHarm + this.tie;
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

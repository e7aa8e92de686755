import { at } from '@/lib/core/at';
import type { Candidate } from './candidates';
import { evaluateClosed } from './closed-form';
import { type Effect, pathEffects } from './path-effects';
import type { RiskSetup } from './risk-setup';
import { PathWeights } from './path-weights';

/** What it takes to undo a step to the last digit. */
interface Step { readonly mask: number; readonly open: number; readonly frequencies: readonly (readonly [number, number])[]; readonly slots: readonly (readonly [number, number])[] }

/**
 * The closed total harm while controls join and leave one by one: the frequency of each path per unit of
 * exposure, times its weight (harm weight and exposure).
 * Each step touches only the paths it changes, so that a search can afford many thousands of them.
 */
export class SearchState {
  /** total harm as it stands */
  harm: number;
  private readonly frequency: Float64Array;
  private weight: Float64Array;
  /** mean effective failure of the member that counts, by group and path */
  private readonly standing: number[];
  private readonly effects: readonly (readonly Effect[])[];
  private readonly weights: PathWeights;
  private mask = 0;
  /** of the mask, candidates that are taken for granted only */
  private open = 0;
  private readonly trail: Step[] = [];

  constructor(setup: RiskSetup, private readonly candidates: readonly Candidate[]) {
    this.frequency = Float64Array.from(evaluateClosed(setup, setup.venue, { exposures: setup.compiled.scenarios.map(() => 1) }).risks.flatMap((risk) => risk.branches.map((branch) => branch.frequency)));
    const { effects, standing } = pathEffects(setup, candidates);
    this.effects = effects;
    this.standing = [...standing];
    this.weights = new PathWeights(setup, candidates);
    this.weight = this.weights.weights(0);
    this.harm = this.total();
  }

  /** Candidates that a search has to settle before the others, because their effects are not products. */
  get entangled(): readonly number[] { return this.weights.entangled; }

  effortOf(index: number): number { return at(this.candidates, index).effort; }

  /** Sort key for ties: ids in order. */
  idsOf(chosen: readonly number[]): string { return chosen.map((index) => at(this.candidates, index).control).sort().join(' '); }

  /** Fall of total harm if this candidate joined now, 0 or more. */
  gainOf(index: number): number {
    const after = this.weightsWith(index);
    let gain = 0;
    if (after === this.weight) {
      for (const effect of at(this.effects, index)) gain += this.harmOf(effect.path) * (1 - this.ratioOf(effect));
      return gain;
    }
    const ratios = new Map(at(this.effects, index).map((effect) => [effect.path, this.ratioOf(effect)]));
    for (let path = 0; path < this.frequency.length; path += 1) {
      gain += (this.frequency[path] as number) * ((this.weight[path] as number) - (ratios.get(path) ?? 1) * (after[path] as number));
    }
    return gain;
  }

  join(index: number): void {
    const frequencies: [number, number][] = [];
    const slots: [number, number][] = [];
    for (const effect of at(this.effects, index)) {
      const before = this.frequency[effect.path] as number;
      frequencies.push([effect.path, before]);
      this.frequency[effect.path] = before * this.ratioOf(effect);
      if (effect.slot < 0) continue;
      slots.push([effect.slot, this.standing[effect.slot] as number]);
      this.standing[effect.slot] = Math.min(this.standing[effect.slot] as number, effect.after);
    }
    this.trail.push({ mask: this.mask, open: this.open, frequencies, slots });
    this.settle(this.mask | this.weights.bit(index), this.open);
  }

  /**
   * Takes the weights of some candidates for granted without letting them join, so that what follows is a
   * bound: nothing that joins later makes a path weigh less than this.
   */
  grant(indices: readonly number[]): void {
    this.trail.push({ mask: this.mask, open: this.open, frequencies: [], slots: [] });
    const granted = indices.reduce((mask, index) => mask | this.weights.bit(index), 0);
    this.settle(this.mask | granted, this.open | (granted & ~this.mask));
  }

  /** Takes back the last join or grant. */
  undo(): void {
    const last = this.trail.pop();
    if (last === undefined) throw new Error('nothing to take back');
    for (const [path, frequency] of last.frequencies) this.frequency[path] = frequency;
    for (const [slot, value] of last.slots) this.standing[slot] = value;
    this.settle(last.mask, last.open);
  }

  /** ln of the ratio by which this candidate would change each path it touches, at the present standing. */
  logRatiosOf(index: number): readonly (readonly [number, number])[] {
    const logs = new Map<number, number>();
    const add = (path: number, ratio: number): void => { if (ratio !== 1) logs.set(path, (logs.get(path) ?? 0) + Math.log(ratio)); };
    for (const effect of at(this.effects, index)) add(effect.path, this.ratioOf(effect));
    const after = this.weightsWith(index);
    if (after !== this.weight) after.forEach((weight, path) => { if (weight !== this.weight[path]) add(path, weight / (this.weight[path] as number)); });
    return [...logs];
  }

  /** Harm of every path as it stands; a copy. */
  pathHarms(): Float64Array { return this.frequency.map((_, path) => this.harmOf(path)); }

  private settle(mask: number, open: number): void {
    this.mask = mask;
    this.open = open;
    this.weight = this.weights.weights(mask, open);
    this.harm = this.total();
  }

  private weightsWith(index: number): Float64Array {
    const bit = this.weights.bit(index);
    return (this.mask | bit) === this.mask ? this.weight : this.weights.weights(this.mask | bit, this.open);
  }

  private harmOf(path: number): number { return (this.frequency[path] as number) * (this.weight[path] as number); }

  private total(): number {
    let sum = 0;
    for (let path = 0; path < this.frequency.length; path += 1) sum += this.harmOf(path);
    return sum;
  }

  private ratioOf(effect: Effect): number {
    if (effect.slot < 0) return effect.after / effect.before;
    const standing = this.standing[effect.slot] as number;
    return Math.min(standing, effect.after) / standing;
  }
}

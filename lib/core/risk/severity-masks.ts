import { type Candidate, inPlace } from './candidates';
import type { RiskSetup } from './risk-setup';
import { CONTAINERS } from './severity-cases';

/**
 * Expected harm weights of every path for each combination of the candidates that change how bad a branch
 * is: containers, because fewer packs burn, and controls that move an input of the room.
 */
export class SeverityMasks {
  private readonly bitOf: ReadonlyMap<number, number>;
  private readonly known = new Map<number, Float64Array>();
  /**
   * Candidates whose effect on severity is not their own affair: those that move inputs, and with them
   * every container. Two of them together can do more than the product of both (fewer packs and more air
   * may pass a threshold that neither passes alone), so a search has to settle them before it may bound
   * by products. Containers by themselves act each on its own number of packs and need no settling.
   */
  readonly entangled: readonly number[];

  constructor(private readonly setup: RiskSetup, private readonly candidates: readonly Candidate[]) {
    const moves = candidates.map((candidate) => (setup.compiled.controls[candidate.index]?.moves ?? []).length > 0);
    const bits = new Map<number, number>();
    candidates.forEach((candidate, position) => {
      if (moves[position] === true || CONTAINERS.some((one) => one === candidate.control)) bits.set(position, 1 << bits.size);
    });
    this.bitOf = bits;
    this.entangled = moves.some(Boolean) ? [...bits.keys()] : [];
  }

  bit(position: number): number { return this.bitOf.get(position) ?? 0; }

  /** Weight of every path, all scenarios in order, when the candidates of this mask are in place. */
  weights(mask: number): Float64Array {
    const known = this.known.get(mask);
    if (known !== undefined) return known;
    const joined = [...this.bitOf].filter(([, bit]) => (mask & bit) !== 0).map(([position]) => this.candidates[position]?.control ?? '');
    const venue = inPlace(this.setup.venue, joined);
    const made = Float64Array.from(this.setup.cases.of(venue).flat(), (severity) => this.setup.severities.of(severity).expectedWeight);
    this.known.set(mask, made);
    return made;
  }
}

import type { InputMove } from '@/lib/content/model';
import type { Venue } from '@/lib/core/answers/venue';
import { at } from '@/lib/core/at';
import { type Candidate, inPlace } from './candidates';
import { exposuresOf, type RiskSetup } from './risk-setup';
import { severityReads } from './severity-reads';

/** Room in a key for the bits of one mask. */
const MOST_BITS = 26;

/**
 * What stands before the frequency per unit of exposure on every path, expected harm weight times exposure,
 * for each combination of the candidates that change it: containers, because fewer packs burn, and
 * controls that move an input of the room.
 */
export class PathWeights {
  private readonly bitOf: ReadonlyMap<number, number>;
  /** bits of the candidates that change how often something can happen at all */
  private readonly exposing: readonly number[];
  private readonly known = new Map<number, Float64Array>();
  /**
   * Candidates that a search has to settle before it may bound by products: those that change an exposure,
   * because one exposure falls where another rises; and those that share a path's severity with one that
   * moves an input, because two together can do more than the product of both (fewer packs and more room
   * may pass a threshold that neither passes alone). Containers by themselves act each on its own number of
   * packs and need no settling.
   */
  readonly entangled: readonly number[];

  constructor(private readonly setup: RiskSetup, private readonly candidates: readonly Candidate[]) {
    const reads = severityReads(setup, candidates);
    const exposing = candidates.map((candidate) => changesExposure(setup, candidate));
    const weighing = candidates.map((candidate, position) => exposing[position] === true || reads.some((path) => path.has(candidate.control)));
    const bits = new Map<number, number>();
    weighing.forEach((weighs, position) => { if (weighs) bits.set(position, 1 << bits.size); });
    this.bitOf = bits;
    this.exposing = [...bits].filter(([position]) => exposing[position]).map(([, bit]) => bit);
    const moves = new Set(candidates.filter((candidate) => movesOf(setup, candidate).length > 0).map((candidate) => candidate.control));
    const tangled = reads.filter((path) => path.size > 1 && [...path].some((control) => moves.has(control)));
    this.entangled = [...bits.keys()].filter((position) => exposing[position] === true || tangled.some((path) => path.has(at(candidates, position).control)));
  }

  bit(position: number): number { return this.bitOf.get(position) ?? 0; }

  /**
   * Weight of every path, all scenarios in order, when the candidates of this mask are in place.
   * @param open those of the mask that may still stay out: then each path has the least exposure that any
   * choice among them gives it, so that what follows is a bound
   */
  weights(mask: number, open = 0): Float64Array {
    const key = mask + open * 2 ** MOST_BITS;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const exposures = this.leastExposures(mask, open);
    const venue = this.venueAt(mask);
    const made = Float64Array.from(this.setup.cases.of(venue).flat(), (severity, path) => this.setup.severities.of(severity).expectedWeight * (exposures[path] as number));
    this.known.set(key, made);
    return made;
  }

  private leastExposures(mask: number, open: number): Float64Array {
    const undecided = this.exposing.filter((bit) => (mask & open & bit) !== 0);
    let least = this.exposuresAt(mask);
    for (let choice = 1; choice < 1 << undecided.length; choice += 1) {
      const out = undecided.reduce((sum, bit, index) => ((choice >> index) % 2 === 1 ? sum | bit : sum), 0);
      const other = this.exposuresAt(mask & ~out);
      least = least.map((exposure, path) => Math.min(exposure, other[path] as number));
    }
    return least;
  }

  private exposuresAt(mask: number): Float64Array {
    const { compiled } = this.setup;
    const exposures = exposuresOf(compiled, this.venueAt(mask));
    return Float64Array.from(compiled.scenarios.flatMap(({ branches }, index) => branches.map(() => at(exposures, index))));
  }

  private venueAt(mask: number): Venue {
    return inPlace(this.setup.venue, [...this.bitOf].filter(([, bit]) => (mask & bit) !== 0).map(([position]) => at(this.candidates, position).control));
  }
}

const movesOf = (setup: RiskSetup, candidate: Candidate): readonly InputMove[] => at(setup.compiled.controls, candidate.index).moves ?? [];

/** Whether putting this control in place changes how often something can happen at all. */
export function changesExposure(setup: RiskSetup, candidate: Candidate): boolean {
  if (movesOf(setup, candidate).length === 0) return false;
  const today = exposuresOf(setup.compiled, setup.venue);
  return exposuresOf(setup.compiled, inPlace(setup.venue, [candidate.control])).some((exposure, index) => exposure !== today[index]);
}

import type { Content, SeverityClass } from '@/lib/content/model';
import { at } from '@/lib/core/at';
import { normalQuantile } from '@/lib/core/statistics/normal';
import type { SeverityCase } from './severity';

const CLASSES = [1, 2, 3, 4, 5] as const;
/** Equal slices of probability over which the harm weight is averaged (amendment A12). */
const SLICES = 200;
/** Beyond this burn strength every yield is clipped, so no class can change any more (amendment A13). */
const CLIP_Z = 1.7;

export interface SeverityFigures {
  /** class at the middle of all yields */
  readonly middle: SeverityClass;
  /** mean harm weight over the yields */
  readonly expectedWeight: number;
}

/**
 * Severity figures worked out once for each different case of a venue. Classes never fall as the burn
 * strength rises, so a few searches replace two hundred evaluations.
 */
export class SeverityBook {
  private readonly figures = new Map<string, SeverityFigures>();
  private readonly bounds = new Map<string, Float64Array>();
  private readonly weights: readonly number[];
  private readonly slices: readonly number[];

  constructor(content: Content) {
    this.weights = CLASSES.map((severity) => content.harmWeights[`${severity}`]);
    this.slices = Array.from({ length: SLICES }, (_, index) => normalQuantile((index + 0.5) / SLICES));
  }

  of(severity: SeverityCase): SeverityFigures {
    const known = this.figures.get(severity.key);
    if (known !== undefined) return known;
    const made = { middle: severity.classAt(0), expectedWeight: this.meanWeight(severity) };
    this.figures.set(severity.key, made);
    return made;
  }

  /** At index c − 2 the burn strength from which the class is c or more; infinite when never. Only draws need it. */
  thresholdsOf(severity: SeverityCase): Float64Array {
    const known = this.bounds.get(severity.key) ?? thresholdsOf(severity);
    this.bounds.set(severity.key, known);
    return known;
  }

  weightOf(severity: number): number { return at(this.weights, severity - 1); }

  /** Harm weight at one burn strength, for the tornado. */
  weightAt(severity: SeverityCase, z: number): number { return this.weightOf(severity.classAt(z)); }

  private meanWeight(severity: SeverityCase): number {
    let sum = 0;
    let from = 0;
    while (from < SLICES) {
      const here = severity.classAt(at(this.slices, from));
      const next = this.firstSliceAbove(severity, here, from);
      sum += (next - from) * this.weightOf(here);
      from = next;
    }
    return sum / SLICES;
  }

  /** First slice after `from` whose class is above `here`; SLICES when there is none. */
  private firstSliceAbove(severity: SeverityCase, here: number, from: number): number {
    let low = from;
    let high = SLICES;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (severity.classAt(at(this.slices, middle)) > here) high = middle;
      else low = middle;
    }
    return high;
  }
}

function thresholdsOf(severity: SeverityCase): Float64Array {
  const lowest = severity.classAt(-CLIP_Z);
  const highest = severity.classAt(CLIP_Z);
  return Float64Array.from([2, 3, 4, 5], (wanted) => {
    if (wanted <= lowest) return Number.NEGATIVE_INFINITY;
    if (wanted > highest) return Number.POSITIVE_INFINITY;
    let low = -CLIP_Z;
    let high = CLIP_Z;
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (severity.classAt(middle) >= wanted) high = middle;
      else low = middle;
    }
    return high;
  });
}

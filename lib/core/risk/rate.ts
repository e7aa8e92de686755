import type { Scenario } from '@/lib/content/model';
import type { RecordedExposure } from '@/lib/core/document';
import type { RateLearning } from '@/lib/core/result';
import { gammaQuantile, gammaShapeOf } from '@/lib/core/statistics/gamma';

/** Rate of a scenario per unit of exposure with every control absent: gamma with this shape and rate. */
export interface RateDistribution { readonly shape: number; readonly rate: number; readonly learning: RateLearning | null }

/** Mean events per unit of exposure. */
export const meanOf = ({ shape, rate }: Pick<RateDistribution, 'shape' | 'rate'>): number => shape / rate;

/** Shape of the gamma for an error factor; most scenarios share one, and finding it is slow. */
export type ShapeOf = (errorFactor: number) => number;

export function rememberedShapes(): ShapeOf {
  const known = new Map<number, number>();
  return (errorFactor) => {
    const shape = known.get(errorFactor) ?? gammaShapeOf(errorFactor);
    known.set(errorFactor, shape);
    return shape;
  };
}

/** The rate before any record: mean and P95/P50 of the content (amendment A8). */
function priorRate(scenario: Scenario, shapeOf: ShapeOf): RateDistribution {
  const shape = shapeOf(scenario.rate.errorFactor);
  return { shape, rate: shape / scenario.rate.mean, learning: null };
}

/**
 * The rate with a school's own record. Events are seen behind the controls, so the record counts as
 * exposure · preventive product: Gamma(a + n, b + E·Π) (amendment A8).
 * @param productToday mean preventive product of today's states, used when the record does not state its own
 */
export function rateWithRecord(scenario: Scenario, record: RecordedExposure | undefined, productToday: number, shapeOf: ShapeOf): RateDistribution {
  const prior = priorRate(scenario, shapeOf);
  if (record === undefined) return prior;
  const preventiveProduct = record.preventiveProduct ?? productToday;
  const shape = prior.shape + record.events;
  const rate = prior.rate + record.exposure * preventiveProduct;
  return {
    shape,
    rate,
    learning: {
      prior: summary(prior.shape, prior.rate),
      record: { events: record.events, exposure: record.exposure, preventiveProduct, assumedToday: record.preventiveProduct === undefined },
      posterior: summary(shape, rate),
    },
  };
}

function summary(shape: number, rate: number) {
  return { mean: meanOf({ shape, rate }), p05: gammaQuantile(0.05, shape, rate), p95: gammaQuantile(0.95, shape, rate) };
}

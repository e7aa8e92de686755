import type { StopCondition } from '@/lib/content/model';
import { evaluateCondition } from '@/lib/core/answers/condition';
import type { Venue } from '@/lib/core/answers/venue';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { conditionContext, derivedOf } from './derived';

/** Stop conditions that hold for the venue, in the order of the content. They are apart from every score. */
export function stopsOf(venue: Venue, model: PhysicsModel): readonly StopCondition[] {
  const context = conditionContext(venue, derivedOf(venue, model));
  return venue.content.stops.filter((stop) => evaluateCondition(stop.when, context));
}

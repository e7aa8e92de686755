import type { Content } from '@/lib/content/model';
import { resolve } from '@/lib/questionnaire/resolve';
import type { Assessment } from '../assessment-schema';
import { jsonPath } from '../json/json-path';
import { olderEditionRemarks } from './older-edition';
import type { DocumentRemark } from './remark';

export function remarksOn(assessment: Assessment, content: Content): readonly DocumentRemark[] {
  const resolution = resolve(content, assessment.answers, assessment.inputs, assessment.notSureTicks);
  return [
    ...olderEditionRemarks(assessment, content, resolution),
    ...resolution.orphaned.map((id) => ({ path: jsonPath(['answers', id]), remark: 'is not used: another answer takes this question away' })),
    ...Object.entries(assessment.states ?? {}).flatMap(([id, state]) =>
      (typeof state === 'string' ? [{ path: jsonPath(['states', id]), remark: 'is written over without a reason' }] : [])),
    ...tripRemarks(assessment, content),
  ];
}

/** The first edition asks for trips on warm days as a part of all trips, but cannot hold one to the other; later ones refuse it. */
function tripRemarks({ answers }: Assessment, { edition }: Content): readonly DocumentRemark[] {
  if (edition !== undefined) return [];
  const trips = answers['travel-trips'];
  if (typeof trips !== 'object' || Array.isArray(trips)) return [];
  const { roadTrips, warmTrips } = trips;
  if (typeof roadTrips !== 'number' || typeof warmTrips !== 'number' || warmTrips <= roadTrips) return [];
  return [{ path: jsonPath(['answers', 'travel-trips', 'warmTrips']), remark: `is ${warmTrips}, more than the ${roadTrips} trips by road of which it is a part` }];
}

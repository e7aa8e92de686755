import 'server-only';
import { type Force, forceOn } from '@/lib/assessments/covers';
import type { SiteAssessment } from '@/lib/db/events/read-events';

/** Whether the assessment that an event rests on holds on a calendar day. */
export function restsForce({ state, suspensions, reviewBy, reviewRequests }: SiteAssessment, day: string): Force {
  return forceOn(day, { state, suspended: suspensions.length > 0, until: reviewBy, reviewAsked: reviewRequests.length > 0 });
}

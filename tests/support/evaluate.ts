import { edition1 } from '@/lib/content/edition-1';
import type { Content } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Venue } from '@/lib/core/answers/venue';
import type { AssessmentDocument } from '@/lib/core/document';
import { type ClosedEvaluation, evaluateClosed } from '@/lib/core/risk/closed-form';
import { type RiskSetup, riskSetup } from '@/lib/core/risk/risk-setup';

export interface Ready { readonly venue: Venue; readonly setup: RiskSetup; readonly today: ClosedEvaluation }

export function ready(document: AssessmentDocument, content: Content = edition1): Ready {
  const venue = resolveVenue(content, document);
  const setup = riskSetup(venue, document);
  return { venue, setup, today: evaluateClosed(setup, venue) };
}

/** Room for rounding when two sums of the same numbers are compared. */
export const noMoreThan = (after: number, before: number): boolean => after <= before * (1 + 1e-12) + 1e-300;

import type { Content } from '@/lib/content/model';
import type { EventLink } from '@/lib/db/events/links';
import type { SiteAssessment } from '@/lib/db/events/read-events';
import type { JudgedLine } from '@/lib/events/check/check-event';
import type { EventRecord } from '@/lib/events/event';
import type { ListedPack } from '@/lib/packs/pack-list';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import type { Site } from '@/lib/places/place';
import type { CurrentSchool } from '../people/current-school';
import type { Scored } from '../signing/score-version';

/** The site's signed assessment with the result that it rests on. */
export interface Rests { readonly version: SiteAssessment; readonly scored: Scored | null }

/** An event with everything that decides about it, read now. */
export interface EventInFull {
  readonly event: EventRecord;
  readonly content: Content;
  readonly school: CurrentSchool;
  readonly site: Site;
  /** those that go along, in the register's order of labels */
  readonly packs: readonly ListedPack[];
  /** those the school holds its packs to */
  readonly limits: SchoolPackLimits;
  readonly rests: Rests | null;
  /** an assessment of the site that is not signed yet */
  readonly onItsWay: SiteAssessment | null;
  readonly links: readonly EventLink[];
  readonly lines: readonly JudgedLine[];
  readonly now: Date;
}

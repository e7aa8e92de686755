import { bySchema, faultsIn, type InputCheck } from '@/lib/forms/check-input';
import type { AdjustableLimit, SchoolRules } from '@/lib/packs/school-rules';

/** Which form it is, and what its check has to know besides what is typed. */
export type FormCheck =
  | { readonly of: 'pack' | 'pack-change' | 'site' | 'site-change' | 'area' | 'area-change' | 'school-begin' | 'school-change' | 'invite' | 'sign-up' | 'action' | 'action-change' | 'adults' | 'venue' | 'travel' | 'venue-link' }
  | { readonly of: 'event' | 'event-change'; readonly timeZone: string }
  | { readonly of: 'incident'; readonly timeZone: string }
  | { readonly of: 'limits'; readonly limits: readonly AdjustableLimit[]; /** set until now */ readonly rules: SchoolRules };

/** Chosen out of the server's list. Browsers know other names for some zones, and must not refuse one of ours. */
const ZONE = { timeZone: true } as const;
/** Whether a time lies ahead is for the server's clock to say: that of a device may be wrong. */
const AT_THE_END = new Date(8_640_000_000_000_000);

/** Returns the check of a form: what its action reads by. Each is loaded by itself, after the page, so that nobody waits for it. */
export async function loadCheck(check: FormCheck): Promise<InputCheck> {
  switch (check.of) {
    case 'pack': return bySchema((await import('@/lib/packs/pack-input')).PackInputSchema);
    case 'pack-change': return bySchema((await import('@/lib/packs/change-pack-input')).ChangePackSchema);
    case 'site': return bySchema((await import('@/lib/places/site-input')).SiteInputSchema);
    case 'site-change': return bySchema((await import('@/lib/places/place-commands')).ChangeSiteSchema);
    case 'area': return bySchema((await import('@/lib/places/place-commands')).AddAreaSchema);
    case 'area-change': return bySchema((await import('@/lib/places/place-commands')).ChangeAreaSchema);
    case 'school-begin': return bySchema((await import('@/lib/people/begin')).BeginInputSchema.omit(ZONE));
    case 'school-change': return bySchema((await import('@/lib/people/school-fields')).SchoolChangeSchema.omit(ZONE));
    case 'invite': return bySchema((await import('@/lib/people/invitation')).InviteInputSchema);
    case 'sign-up': return bySchema((await import('@/lib/people/invitation')).AcceptInputSchema);
    case 'action': return bySchema((await import('@/lib/assessments/action-input')).AddActionSchema);
    case 'action-change': return bySchema((await import('@/lib/assessments/action-input')).ChangeActionSchema);
    case 'venue': return bySchema((await import('@/lib/events/details-input')).ChangeVenueSchema);
    case 'travel': return bySchema((await import('@/lib/events/details-input')).ChangeTravelSchema);
    case 'venue-link': return bySchema((await import('@/lib/events/venue-input')).DescribeVenueSchema);
    case 'adults': return adultsCheck();
    case 'event': case 'event-change': return eventCheck(check);
    case 'incident': return incidentCheck(check);
    case 'limits': return limitsCheck(check);
  }
}

async function adultsCheck(): Promise<InputCheck> {
  const { ChangeAdultsSchema, readAdults } = await import('@/lib/events/adults-input');
  return bySchema(ChangeAdultsSchema, readAdults);
}

async function eventCheck({ of, timeZone }: Extract<FormCheck, { of: 'event' | 'event-change' }>): Promise<InputCheck> {
  const { BeginEventSchema, ChangeBasicsSchema, readBasics } = await import('@/lib/events/event-input');
  return bySchema(of === 'event' ? BeginEventSchema : ChangeBasicsSchema, (basics) => readBasics(basics, timeZone));
}

async function incidentCheck({ timeZone }: { readonly timeZone: string }): Promise<InputCheck> {
  const { readIncident } = await import('@/lib/incidents/read-incident');
  return (input) => faultsIn(readIncident(input, { timeZone, now: AT_THE_END }));
}

async function limitsCheck({ limits, rules }: Extract<FormCheck, { of: 'limits' }>): Promise<InputCheck> {
  const { readRulesPost, RulesPostSchema } = await import('@/lib/packs/school-rules-input');
  return bySchema(RulesPostSchema, (post) => readRulesPost(post, limits, rules));
}

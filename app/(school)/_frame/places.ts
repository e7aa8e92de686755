import type { IconName } from '@/app/_components/ui/icon';
import { mayEver } from '@/lib/access/can';
import type { Role } from '@/lib/access/roles';
import type { Action } from '@/lib/access/table';

export interface Place {
  readonly href: `/${string}`;
  readonly text: string;
  /** without it the page answers with a refusal, so nobody is led there */
  readonly needs?: Action;
}

/** The five of the bar. On a phone they are under the thumb. */
export const BAR_PLACES: readonly (Place & { readonly icon: IconName })[] = [
  { href: '/today', text: 'Today', icon: 'today' },
  { href: '/packs', text: 'Packs', icon: 'packs' },
  { href: '/assessments', text: 'Assessments', needs: 'assessment.read', icon: 'assessments' },
  { href: '/incidents', text: 'Incidents', needs: 'incident.read', icon: 'incidents' },
  { href: '/events', text: 'Events', needs: 'event.read', icon: 'events' },
];

export const MORE_PLACES: readonly Place[] = [
  { href: '/sessions', text: 'Sessions' },
  { href: '/actions', text: 'Actions', needs: 'action.read' },
  { href: '/places', text: 'Places' },
  { href: '/people', text: 'People', needs: 'people.read' },
  { href: '/school', text: 'School' },
  { href: '/account', text: 'Your account' },
];

/** Says whether a page belongs to a place: it is it, or stands below it. */
export function isHere(place: Place, path: string): boolean {
  return path === place.href || path.startsWith(`${place.href}/`);
}

/** Those of the places that somebody of this role may enter. */
export const placesFor = <P extends Place>(places: readonly P[], role: Role): readonly P[] => places.filter(({ needs }) => needs === undefined || mayEver(role, needs));

import type { IconName } from '@/app/_components/ui/icon';

export interface Place {
  readonly href: `/${string}`;
  readonly text: string;
}

/** The five of the bar. On a phone they are under the thumb. */
export const BAR_PLACES: readonly (Place & { readonly icon: IconName })[] = [
  { href: '/today', text: 'Today', icon: 'today' },
  { href: '/packs', text: 'Packs', icon: 'packs' },
  { href: '/assessments', text: 'Assessments', icon: 'assessments' },
  { href: '/incidents', text: 'Incidents', icon: 'incidents' },
  { href: '/events', text: 'Events', icon: 'events' },
];

export const MORE_PLACES: readonly Place[] = [
  { href: '/sessions', text: 'Sessions' },
  { href: '/places', text: 'Places' },
  { href: '/people', text: 'People' },
  { href: '/school', text: 'School' },
  { href: '/account', text: 'Your account' },
];

/** Says whether a page belongs to a place: it is it, or stands below it. */
export function isHere(place: Place, path: string): boolean {
  return path === place.href || path.startsWith(`${place.href}/`);
}

'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import type { ReactNode } from 'react';
import { Icon } from '@/app/_components/ui/icon';
import type { Role } from '@/lib/access/roles';
import { BAR_PLACES, isHere, MORE_PLACES, placesFor, type Place } from './places';

/** The five places of the bar, the emergency tab before them. */
export function BarPlaces({ role }: { readonly role: Role }) {
  const path = usePathname();
  return (
    <nav className="dock" aria-label="Places">
      <EmergencyTab />
      <ul>
        {placesFor(BAR_PLACES, role).map((place) => <li key={place.href}><PlaceLink place={place} path={path}><Icon name={place.icon} />{place.text}</PlaceLink></li>)}
      </ul>
    </nav>
  );
}

/** What does not fit into the bar. */
export function MorePlaces({ role }: { readonly role: Role }) {
  const path = usePathname();
  return <ul>{placesFor(MORE_PLACES, role).map((place) => <li key={place.href}><PlaceLink place={place} path={path}>{place.text}</PlaceLink></li>)}</ul>;
}

/** In one press from every page. */
function EmergencyTab() {
  return <Link className="alarm-tab" href="/emergency" prefetch={false}><Icon name="bang" />Emergency / incident <kbd className="key">Alt I</kbd></Link>;
}

function PlaceLink({ place, path, children }: { readonly place: Place; readonly path: string; readonly children: ReactNode }) {
  return <Link href={place.href} prefetch={false} aria-current={isHere(place, path) ? 'page' : undefined}>{children}</Link>;
}

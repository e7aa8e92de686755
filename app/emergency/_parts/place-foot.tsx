import { CAUTION } from '@/lib/wording/caution';
import type { EmergencyPlace } from '@/lib/server/emergency/current-place';

interface PlaceFootProps {
  readonly path: string;
  readonly place: EmergencyPlace | null;
  readonly confirm: string;
}

/** Whose numbers stand above, and the way to those of another place. */
export function PlaceFoot({ path, place, confirm }: PlaceFootProps) {
  return (
    <footer className="foot">
      {place === null
        ? <p>This device knows no school. Sign in on it once, and this page keeps your school’s numbers.</p>
        : <p>Number, address and meeting places of <b>{place.siteName ?? place.schoolName}</b>.</p>}
      {place === null || place.sites.length === 0 ? null : <OtherPlaces path={path} place={place} />}
      <p>{CAUTION}</p>
      <p>{confirm.charAt(0).toUpperCase()}{confirm.slice(1)}. Once opened, this page opens without a network.</p>
    </footer>
  );
}

function OtherPlaces({ path, place }: { readonly path: string; readonly place: EmergencyPlace }) {
  const others = place.sites.filter(({ id }) => id !== place.siteId);
  return (
    <p className="others">Somewhere else?{' '}
      {place.siteId === null ? null : <a href={path}>{place.schoolName}</a>}
      {others.map(({ id, name }) => <a key={id} href={`${path}?at=${encodeURIComponent(id)}`}>{name}</a>)}
    </p>
  );
}

import Link from 'next/link';

/** The places that exist without an account. */
const PLACES = [
  { id: 'try', href: '/try', text: 'Try it' },
  { id: 'method', href: '/method', text: 'How it is computed' },
] as const;

export type PlaceId = (typeof PLACES)[number]['id'];

export function Places({ here }: { readonly here?: PlaceId }) {
  return (
    <nav className="places" aria-label="Places">
      <ul>
        {PLACES.map((place) => (
          <li key={place.id}><Link href={place.href} prefetch={false} aria-current={place.id === here ? 'page' : undefined}>{place.text}</Link></li>
        ))}
      </ul>
    </nav>
  );
}

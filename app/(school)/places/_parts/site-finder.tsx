import { Finder } from '@/app/_components/ui/finder';

/** Finds a place by a part of its name or address. */
export function SiteFinder({ find }: { readonly find: string }) {
  return <Finder action="/places" name="find" words={find} placeholder="name or address" />;
}

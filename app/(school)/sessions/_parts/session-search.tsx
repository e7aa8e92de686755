import { Finder } from '@/app/_components/ui/finder';

/** Finds by place, person, day, pack or state. */
export function SessionSearch({ find }: { readonly find: string }) {
  return <Finder action="/sessions" name="find" words={find} placeholder="place, person, day, pack" />;
}

import Link from 'next/link';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { findingTitle, findingWords, rateWords } from '@/lib/sessions/trend-words';
import type { Actor } from '@/lib/server/actor';
import { trendOfSchool } from '@/lib/server/sessions/read-trend';

/** What the season's record says, in two sentences. */
export async function SeasonNote({ actor, now }: { readonly actor: Actor; readonly now: Date }) {
  const { trend } = await trendOfSchool(actor, now);
  return (
    <MarginNote title="Season so far">
      <p>{trend.charges === 0 ? 'No charge is logged yet.' : `${trend.charges} charges, ${trend.incidents} incidents: ${rateWords(trend)} for 1,000 charges.`}</p>
      <p>{findingTitle(trend)}. {findingWords(trend)}</p>
      <p><Link href="/trend" prefetch={false}>The trend</Link></p>
    </MarginNote>
  );
}

import Link from 'next/link';
import type { ReviewView, ShownAnswers } from '@/lib/server/signing/review-view';

const NAMES: Readonly<Record<ShownAnswers, string>> = { all: 'All', changed: 'Changed', 'not-sure': 'Not sure', commented: 'Commented', unseen: 'Not looked at' };

interface ShownNavProps { readonly versionId: string; readonly review: ReviewView; readonly shown: ShownAnswers }

/** Which answers are shown; stands in the address. */
export function ShownNav({ versionId, review: { counts, mayLook, view }, shown }: ShownNavProps) {
  const offered = (['all', 'changed', 'not-sure', 'commented', 'unseen'] as const).filter((name) => (name !== 'changed' || view.standing.basedOnId !== null) && (name !== 'unseen' || mayLook));
  return (
    <nav aria-label="Which answers" className="after">
      <ul className="chips">
        {offered.map((name) => <li key={name}><Link href={name === 'all' ? `/assessments/${versionId}/review` : `/assessments/${versionId}/review?show=${name}`} prefetch={false} aria-current={name === shown ? 'true' : undefined}>{NAMES[name]} <b>{counts[name]}</b></Link></li>)}
      </ul>
    </nav>
  );
}

import Link from 'next/link';
import { Section } from '@/app/_components/ui/section';
import { isBeyond } from '@/lib/assessments/covers';
import type { CoverLine, PaperNow } from '@/lib/server/today/paper-facts';
import type { SignedFact } from '@/lib/today/facts';
import { whole } from '@/lib/wording/numbers';

/** Signed papers, what they hold for, and what there is now of it. */
export function PaperPart({ papers }: { readonly papers: readonly PaperNow[] }) {
  return (
    <Section id="papers" title="Does the paper still match?">
      {papers.map(({ fact, covers }) => fact.standing === null ? null : (
        <div key={fact.id} className="paper-now">
          <h3><Link href={`/assessments/${fact.id}/result`} prefetch={false}>{fact.name}</Link></h3>
          <p>{forceWords(fact.standing)}</p>
          <ul className="covers">{covers.map((line) => <Cover key={line.what} line={line} />)}</ul>
        </div>
      ))}
    </Section>
  );
}

/** One sentence; when something speaks against it, it does not say "in force" as if nothing did. */
function forceWords({ force, until, drifts }: SignedFact): string {
  const to = until === null ? '' : ` until ${until}`;
  switch (force) {
    case 'suspended': return 'Suspended: it is not in force.';
    case 'run out': return `It ended on ${until ?? 'a day nobody named'}.`;
    case 'review asked': return 'Under review: an officer has not yet said whether it still holds.';
    case 'in force': return drifts.length === 0 ? `In force${to}.` : `Signed${to}, and no longer matched by what you have.`;
  }
}

const WORDS: Readonly<Record<CoverLine['what'], (now: string, covered: string) => string>> = {
  packs: (now, covered) => `${now} packs now, ${covered} on the paper`,
  storedWh: (now, covered) => `${now} Wh in the store, ${covered} Wh on the paper`,
  sessions: (now, covered) => `${now} sessions since it was signed, ${covered} on the paper`,
  people: (now, covered) => `${now} people at the last count, ${covered} on the paper`,
};

const NOT_COUNTED: Readonly<Record<CoverLine['what'], (covered: string) => string>> = {
  packs: (covered) => `${covered} packs on the paper`, storedWh: (covered) => `${covered} Wh in the store on the paper; what lies there is not known`,
  sessions: (covered) => `${covered} sessions on the paper`, people: (covered) => `${covered} people on the paper; nobody was counted yet`,
};

/** A bar to the covered figure, and the part beyond it. */
function Cover({ line: { what, covered, now } }: { readonly line: CoverLine }) {
  if (now === null) return <li className="muted">{NOT_COUNTED[what](whole(covered))}</li>;
  const isOver = isBeyond(what, now, covered);
  const most = Math.max(now, covered, 1);
  return (
    <li className={isOver ? 'over' : undefined}>
      <span>{WORDS[what](whole(now), whole(covered))}</span>
      <svg className="cover-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true"><rect className="is" x="0" y="2" width={(100 * Math.min(now, covered)) / most} height="4" />{isOver ? <rect className="beyond" x={(100 * covered) / most} y="2" width={(100 * (now - covered)) / most} height="4" /> : null}<line x1={(100 * covered) / most} x2={(100 * covered) / most} y1="0" y2="8" /></svg>
    </li>
  );
}

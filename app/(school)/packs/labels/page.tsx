import type { Metadata } from 'next';
import Link from 'next/link';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { packLabels } from '@/lib/server/packs/pack-labels';
import { PrintButton } from './print-button';

export const metadata: Metadata = { title: 'Labels' };

interface LabelsPageProps { readonly searchParams: Promise<{ readonly pack?: string | string[] }> }

/** Labels of all packs that are here, or of one, to be printed, cut and stuck on. Scanned, they open the pack's page. */
export default async function LabelsPage({ searchParams }: LabelsPageProps) {
  const actor = await requireMay('pack.read');
  const [only] = [(await searchParams).pack].flat();
  const labels = await packLabels(actor, only ?? null);
  return (
    <Sheet wide>
      <PageHead crumb={<Link href="/packs" prefetch={false}><Icon name="left" />Packs</Link>} title={labels.length === 1 ? 'One label' : `${labels.length} labels`} lead="Stick them on a flat side, clear of leads and of the balance plug. Never write on a pack with a sharp pen." />
      <p className="row no-print"><PrintButton /></p>
      <ul className="labels">
        {labels.map(({ id, label, lines, qr }) => (
          <li key={id}>
            <svg viewBox={`0 0 ${qr.size} ${qr.size}`} role="img" aria-label={`Code that opens the page of ${label}`} shapeRendering="crispEdges"><path d={qr.path} fill="#000" /></svg>
            <span><b>{label}</b>{lines.map((line) => <span key={line}>{line}<br /></span>)}</span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

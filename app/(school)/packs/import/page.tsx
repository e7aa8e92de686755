import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { CELL_TYPE_WORDS, PACK_COLUMNS } from '@/lib/packs/csv-columns';
import { requireMay } from '@/lib/server/actor';
import { importPacksAction } from './actions';
import { ImportFields } from './import-fields';

export const metadata: Metadata = { title: 'Read a table of packs' };

export default async function ImportPage() {
  await requireMay('pack.add');
  return (
    <Sheet>
      <PageHead crumb={<Link href="/packs" prefetch={false}><Icon name="left" />Packs</Link>} title="Read a table of packs" lead="Paste it from a spreadsheet, or choose a file. You see what was read before anything is entered." />
      <ActionForm action={importPacksAction} id="import-packs" faultsTitle="Nothing was entered. Look at this again">
        <ImportFields />
      </ActionForm>
      <Disclosure summary="Which columns are understood">
        <p>The first line holds the heads, in any order. Commas, semicolons or tabs part the cells; a decimal comma is understood.</p>
        <ul className="rows">{PACK_COLUMNS.map(({ head, needed, also }) => <li key={head}><span><b>{head}</b>{needed ? ' (needed)' : ''}</span><span className="small muted">also: {also.join(', ')}</span></li>)}</ul>
        <p>Full voltage of a cell: {Object.values(CELL_TYPE_WORDS).map(([word]) => word).join(', ')}. Second-hand: yes, no or not sure. Dates: 2026-11-25 or 25.11.2026.</p>
      </Disclosure>
    </Sheet>
  );
}

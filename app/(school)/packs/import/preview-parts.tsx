import { FormSubmit } from '@/app/_components/form/form-fields';
import { Notice } from '@/app/_components/ui/notice';
import { Table } from '@/app/_components/ui/table';
import { CELL_TYPE_WORDS } from '@/lib/packs/csv-columns';
import type { TableFault } from '@/lib/packs/read-pack-table';
import type { ImportPreview } from '@/lib/server/packs/import-packs';

/** What was read: every place that has to be put right, then the packs. The button to enter them stands only where nothing is wrong. */
export function PreviewParts({ preview }: { readonly preview: ImportPreview }) {
  const { packs, faults, ignored } = preview;
  return (
    <>
      {ignored.length === 0 ? null : <Notice level={2} title={ignored.length === 1 ? 'One column is left out' : `${ignored.length} columns are left out`}>{`Nothing is known of: ${ignored.join(', ')}.`}</Notice>}
      {faults.length === 0 ? null : <Faults faults={faults} />}
      {packs.length === 0 ? null : <Packs packs={packs} />}
      {faults.length > 0 || packs.length === 0 ? null : <p className="row"><FormSubmit name="go" value="import">{packs.length === 1 ? 'Enter this pack' : `Enter these ${packs.length} packs`}</FormSubmit></p>}
    </>
  );
}

function Faults({ faults }: { readonly faults: readonly TableFault[] }) {
  return (
    <Table
      caption="To be put right in the table above"
      captionShown
      columns={[
        { head: 'Line', cell: ({ line }) => line },
        { head: 'Column', cell: ({ column }) => column ?? 'whole line' },
        { head: 'There stands', cell: ({ found }) => (found === null ? <span className="muted">nothing</span> : found) },
        { head: 'What to do', cell: ({ message }) => message },
      ]}
      rows={faults}
      rowKey={({ line, column, message }) => `${line} ${column ?? ''} ${message}`}
      presses={() => true}
    />
  );
}

function Packs({ packs }: Pick<ImportPreview, 'packs'>) {
  return (
    <Table
      caption={packs.length === 1 ? 'Read: one pack' : `Read: ${packs.length} packs`}
      captionShown
      columns={[
        { head: 'Label', cell: ({ input }) => input.label },
        { head: 'Cells', numeric: true, cell: ({ input }) => input.series },
        { head: 'mAh', numeric: true, cell: ({ input }) => input.capacityMah },
        { head: 'Full', cell: ({ input }) => CELL_TYPE_WORDS[input.cellType][0] },
        { head: 'Batch', cell: ({ input }) => input.batch },
        { head: 'Bought', cell: ({ input }) => input.boughtOn },
      ]}
      rows={packs}
      rowKey={({ line }) => String(line)}
    />
  );
}

import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import type { WholeDocument } from '../_state/whole-document';
import { AnswerName } from './answer-name';
import { printedInputs } from './printed-inputs';

/** What goes onto the paper as it was answered and changes no figure; what nobody has asked stands first. */
export function PrintedPart({ content, whole }: { readonly content: Content; readonly whole: WholeDocument }) {
  const rows = printedInputs(content, whole);
  if (rows.length === 0) return null;
  return (
    <>
      <h3 className="after">Printed as answered</h3>
      <p>These change no figure; they stand in the paper as they are.</p>
      <Table
        caption="Printed as answered"
        columns={[
          { head: 'What', cell: (row) => <AnswerName content={content} name={row.input} title={row.title} /> },
          { head: 'Answer', cell: (row) => (row.open ? <b>{row.words}</b> : row.words) },
        ]}
        rows={rows}
        rowKey={(row) => row.input}
      />
    </>
  );
}

import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import type { AssessmentDocument } from '@/lib/core/document';
import { printedInputs } from '@/lib/questionnaire/printed-inputs';
import { partOf, type WholeDocument } from '../_state/whole-document';
import { AnswerName } from './answer-name';

/** What goes onto the paper as it was answered and changes no figure; what nobody has asked stands first. */
export function PrintedPart({ content, whole }: { readonly content: Content; readonly whole: WholeDocument }) {
  // The document has been read already, so its parts have the shapes of the format.
  const rows = printedInputs(content, { answers: partOf(whole, 'answers'), inputs: partOf(whole, 'inputs') } as AssessmentDocument);
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

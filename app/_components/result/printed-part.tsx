import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import { printedInputs } from '@/lib/questionnaire/printed-inputs';
import type { DocumentParts, QuestionAddress } from './document-parts';
import { AnswerName } from './answer-name';

/** What goes onto the paper as it was answered and changes no figure; what nobody has asked stands first. */
export function PrintedPart({ content, parts, addressOf }: { readonly content: Content; readonly parts: DocumentParts; readonly addressOf: QuestionAddress }) {
  const rows = printedInputs(content, parts);
  if (rows.length === 0) return null;
  return (
    <>
      <h3 className="after">Printed as answered</h3>
      <p>These change no figure; they stand in the paper as they are.</p>
      <Table
        caption="Printed as answered"
        columns={[
          { head: 'What', cell: (row) => <AnswerName content={content} addressOf={addressOf} name={row.input} title={row.title} /> },
          { head: 'Answer', cell: (row) => (row.open ? <b>{row.words}</b> : row.words) },
        ]}
        rows={rows}
        rowKey={(row) => row.input}
      />
    </>
  );
}

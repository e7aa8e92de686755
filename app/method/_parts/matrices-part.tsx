import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import { gradeRule } from '@/lib/wording/grades';
import type { PartProps } from './part';

/** Severity classes, their weights, and the grades of the matrix in use. */
export function MatricesPart({ content }: PartProps) {
  return (
    <Section id="matrices" title="Grades and classes">
      <Table
        caption="Severity classes"
        columns={[
          { head: 'Class', cell: (row) => String(row.class) },
          { head: 'People', cell: (row) => row.people },
          { head: 'Building', cell: (row) => row.building },
          { head: 'Programme', cell: (row) => row.programme },
          { head: 'Harm points', numeric: true, cell: (row) => content.harmWeights[row.class].toLocaleString('en-GB') },
        ]}
        rows={content.severityScale}
        rowKey={(row) => String(row.class)}
      />
      {content.matrices.map((matrix) => (
        <div key={matrix.id} className="after">
          <p>{matrix.likelihood.map((band) => `${band.level}: ${band.word}, ${band.onceIn}`).join('. ')}.</p>
          <p className="after">Score: {matrix.score}. {matrix.kind}; {matrix.source}.</p>
          <Table
            caption="Grades by score"
            columns={[
              { head: 'Grade', cell: (row) => <GradeMark grade={row.grade} /> },
              { head: 'Score', numeric: true, cell: (row) => `${row.from} to ${row.to}` },
              { head: 'Asks for', cell: (row) => gradeRule(row.grade) },
            ]}
            rows={matrix.grades}
            rowKey={(row) => row.grade}
          />
        </div>
      ))}
    </Section>
  );
}

import { Section } from '@/app/_components/ui/section';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Table } from '@/app/_components/ui/table';
import { exact } from '@/lib/wording/numbers';
import { quantityWords } from '@/lib/wording/quantities';
import type { PartProps } from './part';

/** Physics, constants and published levels, each with kind and source. */
export function NumbersPart({ content }: PartProps) {
  const { aegl, idlh } = content;
  return (
    <Section id="numbers" title="Numbers of smoke and heat" aside="low, middle, high">
      <Table
        caption="Yields and times with their range"
        columns={[
          { head: 'What', cell: (row) => quantityWords(row.id) },
          { head: 'Low', numeric: true, cell: (row) => exact(row.low) },
          { head: 'Middle', numeric: true, cell: (row) => exact(row.mid) },
          { head: 'High', numeric: true, cell: (row) => exact(row.high) },
          { head: 'Unit', cell: (row) => row.unit },
          { head: 'Kind and source', cell: (row) => `${row.kind}: ${row.source}` },
        ]}
        rows={content.physics}
        rowKey={(row) => row.id}
      />
      <DisclosureTable
        summary={`${content.constants.length} constants`}
        caption="Constants"
        columns={[
          { head: 'What', cell: (row) => quantityWords(row.id) },
          { head: 'Value', numeric: true, cell: (row) => exact(row.value) },
          { head: 'Unit', cell: (row) => row.unit },
          { head: 'Kind and source', cell: (row) => `${row.kind}: ${row.source}` },
        ]}
        rows={content.constants}
        rowKey={(row) => row.id}
      />
      <DisclosureTable
        summary="Published levels of hydrogen fluoride and carbon monoxide"
        caption="AEGL values in parts per million, by minutes of breathing it"
        columns={[
          { head: 'Level', cell: (row) => row.level },
          ...aegl.durationsMin.map((minutes, index) => ({ head: `${minutes} min`, numeric: true, cell: (row: { readonly values: readonly number[] }) => exact(row.values[index] ?? Number.NaN) })),
        ]}
        rows={[
          ...Object.entries(aegl.HF).map(([level, values]) => ({ level: `HF, AEGL-${level}`, values })),
          ...Object.entries(aegl.CO).map(([level, values]) => ({ level: `CO, AEGL-${level}`, values })),
        ]}
        rowKey={(row) => row.level}
      />
      <p className="small muted after">{aegl.source}. Immediately dangerous to life or health: HF {idlh.HF} ppm, CO {idlh.CO} ppm ({idlh.source}).</p>
    </Section>
  );
}

import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { exact } from '@/lib/wording/numbers';
import type { PartProps } from './part';

/** The controls: how often each fails when it is needed, and how its state counts. */
export function ControlsPart({ content }: PartProps) {
  return (
    <Section id="controls" title="Controls" aside={`${content.controls.length}`}>
      <p>In place, a control fails now and then. Partly in place it counts as the geometric middle between in place and absent. Not sure is spread over everything between the two. Absent lets all past.</p>
      <DisclosureTable
        summary="How often each fails when needed"
        caption="Controls in place: chance of failure on demand"
        columns={[
          { head: 'Control', cell: (row) => row.title },
          { head: 'Fails', numeric: true, cell: (row) => exact(row.pfd) },
          { head: 'Spread', numeric: true, cell: (row) => `× ${row.errorFactor}` },
          { head: 'Kind and basis', cell: (row) => `${row.kind}: ${row.basis}` },
        ]}
        rows={content.controls}
        rowKey={(row) => row.id}
      />
    </Section>
  );
}

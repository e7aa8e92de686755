import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { formulaWords } from '../_words/formula-words';
import type { PartProps } from './part';

/** The risks with their starting rates and what these are multiplied with. */
export function ScenariosPart({ content }: PartProps) {
  const base = (id: string): string => content.exposures.find((exposure) => exposure.id === id)?.title ?? id;
  return (
    <Section id="scenarios" title="Risks" aside={`${content.scenarios.length}`}>
      <p>A starting rate is for a team that does nothing of what holds it back. The spread is a factor: the 95th of a hundred such teams, divided by the middle one.</p>
      <DisclosureTable
        summary="Starting rates"
        caption="Starting rates with no control in place"
        columns={[
          { head: 'Risk', cell: (row) => row.title },
          { head: 'Events', numeric: true, cell: (row) => row.rate.mean.toExponential(1).replace('e-', ' × 10^−') },
          { head: 'For each', cell: (row) => base(row.exposureBase) },
          { head: 'Spread', numeric: true, cell: (row) => `× ${row.rate.errorFactor}` },
          { head: 'Kind and basis', cell: (row) => `${row.rate.kind}: ${row.rate.basis}` },
        ]}
        rows={content.scenarios}
        rowKey={(row) => row.id}
      />
      <DisclosureTable
        summary="What they are multiplied with"
        caption="Exposures of a season"
        columns={[
          { head: 'What', cell: (row) => row.title },
          { head: 'Formula', cell: (row) => formulaWords(content, row.formula) },
          { head: 'Kind and basis', cell: (row) => `${row.kind}: ${row.basis}` },
        ]}
        rows={content.exposures}
        rowKey={(row) => row.id}
      />
    </Section>
  );
}

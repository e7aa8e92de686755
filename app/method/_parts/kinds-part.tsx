import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import type { PartProps } from './part';

/** How many numbers rest on what. */
export function KindsPart({ content }: PartProps) {
  return (
    <Section id="kinds" title="Kinds of numbers">
      <p><b>Published</b>: a source prints the value. <b>Common practice</b>: the trade does it so, no single source. <b>Our judgement</b>: nobody has published it, so we say what we took and why.</p>
      <div className="after">
        <Table
          caption="Numbers by kind"
          columns={[
            { head: 'Kind', cell: (row) => row.kind },
            { head: 'Numbers', numeric: true, cell: (row) => String(row.count) },
          ]}
          rows={countsByKind(content)}
          rowKey={(row) => row.kind}
        />
      </div>
    </Section>
  );
}

function countsByKind(content: Content): readonly { readonly kind: string; readonly count: number }[] {
  const kinds = [
    ...content.controls.map((control) => control.kind),
    ...content.scenarios.flatMap((scenario) => [scenario.rate.kind, ...scenario.branches.map((branch) => branch.conditional.kind)]),
    ...content.physics.map((spread) => spread.kind),
    ...content.constants.map((constant) => constant.kind),
    ...content.inputs.map((input) => input.kind),
    ...content.exposures.map((exposure) => exposure.kind),
    ...content.packLimits.rules.map((rule) => rule.kind),
    content.aegl.kind, content.idlh.kind, content.reentry.kind,
  ];
  const counts = new Map<string, number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].map(([kind, count]) => ({ kind, count })).sort((one, other) => other.count - one.count);
}

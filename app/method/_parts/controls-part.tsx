import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { Content, InputMove } from '@/lib/content/model';
import { exact } from '@/lib/wording/numbers';
import type { PartProps } from './part';

/** The controls: how often each fails when it is needed, and how its state counts. */
export function ControlsPart({ content }: PartProps) {
  const moves = content.controls.some((control) => control.moves !== undefined);
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
          ...(moves ? [{ head: 'Also changes, once in place', cell: (row: (typeof content.controls)[number]) => movesWords(content, row.moves ?? []) }] : []),
          { head: 'Kind and basis', cell: (row) => `${row.kind}: ${row.basis}` },
        ]}
        rows={content.controls}
        rowKey={(row) => row.id}
      />
    </Section>
  );
}

const WHEN: Readonly<Record<InputMove['only'], string>> = { always: '', 'if lower': ' at least', 'if higher': ' at most' };

/** What an action changes besides the control: "free height above the packs: at least 1.5 m". */
function movesWords({ inputs }: Content, moves: readonly InputMove[]): string {
  return moves.map(({ input, to, only }) => {
    const definition = inputs.find((one) => one.id === input);
    const unit = definition === undefined || definition.unit === '0 or 1' ? '' : ` ${definition.unit}`;
    const value = definition?.unit === '0 or 1' ? (to === 1 ? 'yes' : 'no') : String(to);
    return `${definition?.title ?? input}:${WHEN[only]} ${value}${unit}`;
  }).join('; ');
}

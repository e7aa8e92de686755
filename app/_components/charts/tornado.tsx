import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { tornadoScene } from '@/lib/charts/tornado';
import type { DoubtResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';
import { ChartFigure } from './chart-figure';

interface TornadoProps {
  /** widest first */
  readonly doubts: readonly DoubtResult[];
  /** today's, harm points a season */
  readonly totalHarm: number;
}

/** What would most reduce doubt. */
export function Tornado({ doubts, totalHarm }: TornadoProps) {
  return (
    <ChartFigure
      wide={tornadoScene(doubts, totalHarm, WIDE)}
      narrow={tornadoScene(doubts, totalHarm, NARROW)}
      caption="All harm with one thing at its low and its high end, everything else as today. In bold what you can go and look up; the others are figures of ours."
    >
      <DisclosureTable
        caption="What moves the harm, harm points a season"
        columns={[
          { head: 'What', cell: (doubt) => doubt.title },
          { head: 'Between', cell: (doubt) => doubt.between },
          { head: 'Low', numeric: true, cell: (doubt) => rounded(doubt.harmLow) },
          { head: 'High', numeric: true, cell: (doubt) => rounded(doubt.harmHigh) },
          { head: 'Can be checked', cell: (doubt) => (doubt.canBeChecked ? 'yes' : 'no') },
        ]}
        rows={doubts}
        rowKey={(doubt) => `${doubt.kind} ${doubt.id}`}
      />
    </ChartFigure>
  );
}

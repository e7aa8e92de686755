import { ChartFigure } from '@/app/_components/charts/chart-figure';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { type ControlDot, controlChartScene } from '@/lib/charts/control-chart';
import { NARROW, WIDE } from '@/lib/charts/scene';
import type { Trend } from '@/lib/sessions/trend';
import { findingTitle, PER, perThousand, rateWords } from '@/lib/sessions/trend-words';
import { type DateStyle, shortDayWords } from '@/lib/wording/dates';

const HEADING = 'Incidents for 1,000 charges, by fortnight';

/** The control chart and the same as a table. */
export function TrendChart({ trend, style }: { readonly trend: Trend; readonly style: DateStyle }) {
  const dots = trend.periods.map(({ from, point }): ControlDot => ({
    label: new Intl.DateTimeFormat(style.locale, { day: 'numeric', month: 'short', timeZone: style.timeZone }).format(from),
    value: point === null ? null : point.value * PER, high: point === null ? null : point.high * PER, isAbove: trend.finding === 'above' && point?.where === 'above',
  }));
  const words = { heading: HEADING, finding: `${rateWords(trend)} incidents for 1,000 charges, over ${trend.periods.length} fortnights. ${findingTitle(trend)}.` };
  const centre = (trend.rate?.value ?? 0) * PER;
  return (
    <ChartFigure wide={controlChartScene(dots, centre, words, WIDE)} narrow={controlChartScene(dots, centre, words, NARROW)} caption="Dots: each fortnight. Dashed: all of them together. The sand is chance, not what is allowed.">
      <DisclosureTable
        caption={HEADING}
        columns={[
          { head: 'Fortnight from', cell: ({ from }) => shortDayWords(from, style) },
          { head: 'Sessions', numeric: true, cell: ({ sessions }) => String(sessions) },
          { head: 'Charges', numeric: true, cell: ({ charges }) => String(charges) },
          { head: 'Incidents', numeric: true, cell: ({ incidents }) => String(incidents) },
          { head: 'Near misses', numeric: true, cell: ({ nearMisses }) => String(nearMisses) },
          { head: 'For 1,000', numeric: true, cell: ({ point }) => (point === null ? '' : perThousand(point.value)) },
          { head: 'Chance reaches', numeric: true, cell: ({ point }) => (point === null ? '' : perThousand(point.high)) },
        ]}
        rows={trend.periods}
        rowKey={({ from }) => from.toISOString()}
      />
    </ChartFigure>
  );
}

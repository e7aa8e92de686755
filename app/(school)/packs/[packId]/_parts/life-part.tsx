import { ChartFigure } from '@/app/_components/charts/chart-figure';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { spreadScene } from '@/lib/charts/spread-over-time';
import type { CheckRecord } from '@/lib/packs/checks/check-record';
import { spreadTrend } from '@/lib/packs/checks/spread-trend';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { type DateStyle, dayWords } from '@/lib/wording/dates';

interface LifePartProps { readonly checks: readonly CheckRecord[]; readonly charges: number | null; readonly limits: SchoolPackLimits; readonly style: DateStyle }

/** How far its cells stood apart at each check, and whether they drift. */
export function LifePart({ checks, charges, limits: held, style }: LifePartProps) {
  const { points, words } = spreadTrend(checks);
  const aside = `${checks.length === 1 ? 'one check' : `${checks.length} checks`}${charges === null ? '' : `, ${charges} charges`}`;
  if (points.length === 0) return <Section id="life" title="Its life so far" aside={aside}><p>{words}</p></Section>;
  const limits = held.rules.filter(({ measure }) => measure === 'cellSpread').map(({ value, verdict }) => ({ volts: Number(value), words: `${Math.round(Number(value) * 1000)} mV: ${verdict}` }));
  return (
    <Section id="life" title="Its life so far" aside={aside}>
      <ChartFigure wide={spreadScene(points, limits, WIDE)} narrow={spreadScene(points, limits, NARROW)} caption={words}>
        <DisclosureTable
          caption="Spread of the cells at each check"
          columns={[{ head: 'Check', cell: ({ at }) => dayWords(at, style) }, { head: 'Spread, mV', numeric: true, cell: ({ spreadV }) => Math.round(spreadV * 1000) }]}
          rows={points}
          rowKey={({ at }) => at.toISOString()}
        />
      </ChartFigure>
    </Section>
  );
}

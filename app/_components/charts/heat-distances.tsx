import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { heatScene, type Surroundings } from '@/lib/charts/heat-distances';
import { NARROW, WIDE } from '@/lib/charts/scene';
import type { HeatCase, HeatLevel } from '@/lib/core/result';
import { metres } from '@/lib/wording/measures';
import { rounded } from '@/lib/wording/numbers';
import { ChartFigure } from './chart-figure';

interface HeatDistancesProps { readonly heat: HeatCase; readonly around: Surroundings }

const ROWS: readonly { readonly what: string; readonly of: (level: HeatLevel) => string }[] = [
  { what: 'Heat release', of: (level) => `${rounded(level.Q_kW)} kW` },
  { what: 'Flame above the packs', of: (level) => metres(level.flameHeight) },
  { what: 'Wood may catch fire within', of: (level) => metres(level.ignitionDistance) },
  { what: 'Bare skin hurts within', of: (level) => metres(level.painDistance) },
];

/** Flames and heat of the packs, and what stands around them, to one scale. */
export function HeatDistances({ heat, around }: HeatDistancesProps) {
  return (
    <ChartFigure
      wide={heatScene(heat, around, WIDE)}
      narrow={heatScene(heat, around, NARROW)}
      caption="Drawn to scale, from the side. Sand: from the weakest to the fiercest fire of these packs. Jets, sparks and burning parts fly further than any of this."
    >
      <DisclosureTable
        caption="Reach of flames and heat"
        columns={[
          { head: 'What', cell: (row) => row.what },
          { head: 'Low', numeric: true, cell: (row) => row.of(heat.low) },
          { head: 'Middle', numeric: true, cell: (row) => row.of(heat.mid) },
          { head: 'High', numeric: true, cell: (row) => row.of(heat.high) },
        ]}
        rows={ROWS}
        rowKey={(row) => row.what}
      />
    </ChartFigure>
  );
}

import { ChartFigure } from '@/app/_components/charts/chart-figure';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { cellScene, cellFinding, type CellLimits } from '@/lib/charts/cell-rulers';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { limitsOfPack } from '@/lib/core/battery/limits-of-pack';
import type { TemperatureUnit } from '@/lib/packs/checks/check-answers';
import type { CheckRecord } from '@/lib/packs/checks/check-record';
import { figureOf } from '@/lib/packs/checks/verdict-words';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { type DateStyle, momentWords } from '@/lib/wording/dates';

interface CellsPartProps { readonly checks: readonly CheckRecord[]; readonly cellType: string; readonly limits: SchoolPackLimits; readonly style: DateStyle; readonly unit: TemperatureUnit }

/** The cells as they were last measured, and the other figures of that check. */
export function CellsPart({ checks, cellType, limits: held, style, unit }: CellsPartProps) {
  const measured = checks.find(({ cellVolts }) => cellVolts.length > 0);
  if (measured === undefined) return null;
  const { cellVolts } = measured;
  const limits = limitsShown(held, cellType);
  const pressing = pressingCells(measured);
  return (
    <Section id="cells" title="Cells when last measured" aside={momentWords(measured.at, style)}>
      <ChartFigure wide={cellScene(cellVolts, limits, pressing, WIDE)} narrow={cellScene(cellVolts, limits, pressing, NARROW)} caption={cellFinding(cellVolts)}>
        <DisclosureTable
          caption="Voltage of each cell"
          columns={[
            { head: 'Cell', cell: (cell) => cell.number },
            { head: 'Voltage, V', numeric: true, cell: (cell) => (cell.volts === null ? 'nothing' : cell.volts.toFixed(2)) },
          ]}
          rows={cellVolts.map((volts, at) => ({ number: at + 1, volts }))}
          rowKey={(cell) => String(cell.number)}
        />
      </ChartFigure>
      <dl className="checks">
        {FIGURES.flatMap(({ measure, name }) => {
          const value = measured.measures[measure];
          return typeof value === 'number' ? [<div key={measure}><dt>{name}</dt><dd>{figureOf(measure, value, held, unit)}</dd></div>] : [];
        })}
      </dl>
    </Section>
  );
}

const FIGURES = [
  { measure: 'cellSpread', name: 'Spread of the cells' },
  { measure: 'temperatureRise', name: 'Warmer than the room by' },
  { measure: 'resistanceRatio', name: 'Resistance against the first check' },
  { measure: 'capacityShare', name: 'Charge delivered, of its label' },
] as const;

function limitsShown(held: SchoolPackLimits, cellType: string): CellLimits {
  const own = limitsOfPack(held, cellType);
  if (!own.ok) return { low: null, full: null, storage: null };
  const { rules, full, storageCharge } = own.value;
  const low = rules.find(({ id }) => id === 'cell-low')?.value;
  return { low: typeof low === 'number' ? low : null, full: full.value, storage: { low: storageCharge.low, high: storageCharge.high } };
}

/** The cells that a sign of this check speaks of: the lowest of a low or uneven row, the highest of one too full, the silent ones. */
function pressingCells({ cellVolts, result }: CheckRecord): readonly number[] {
  const reading = cellVolts.filter((volts) => volts !== null);
  const fired = new Set(result.fired.filter(({ verdict }) => verdict === 'isolate' || verdict === 'leave').map(({ measure }) => measure));
  const isPressing = (volts: number | null): boolean => {
    if (volts === null) return fired.has('silentCells');
    if ((fired.has('cellMin') || fired.has('cellSpread')) && volts === Math.min(...reading)) return true;
    return fired.has('cellMax') && volts === Math.max(...reading);
  };
  return cellVolts.flatMap((volts, at) => (isPressing(volts) ? [at + 1] : []));
}

import { SliderRuler } from '@/app/_components/ui/slider-ruler';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { bestWithin, effortScene } from '@/lib/charts/effort-curve';
import { NARROW, WIDE } from '@/lib/charts/scene';
import type { BestSet } from '@/lib/core/result';
import { searchWords } from '@/lib/wording/search';
import { percent, percentRange } from '@/lib/wording/numbers';
import { SceneSvg } from './scene-svg';

interface EffortCurveProps {
  /** best set for each budget; at least one */
  readonly sets: readonly BestSet[];
  readonly budget: number;
  readonly onBudget: (budget: number) => void;
  /** name of a control */
  readonly titleOf: (control: string) => string;
}

/** How much harm an amount of effort takes away; the slider under it chooses the effort. */
export function EffortCurve({ sets, budget, onBudget, titleOf }: EffortCurveProps) {
  const most = Math.max(1, budget, ...sets.map((set) => set.budget));
  const chosen = bestWithin(sets, budget);
  const words = chosen === null ? 'nothing yet' : `${percent(chosen.cut)} of the harm`;
  return (
    <figure className="fig">
      <SceneSvg scene={effortScene(sets, budget, WIDE)} shown="wide" />
      <SceneSvg scene={effortScene(sets, budget, NARROW)} shown="narrow" />
      <SliderRuler id="effort" label="Points of effort you can give" min={0} max={most} step={1} value={budget} marks={marksTo(most)} valueText={`${budget} points, ${words}`} describedBy="effort-words" onChange={onBudget} />
      <p id="effort-words" className="cut" aria-live="polite">
        <span className="fig-n"><b>{budget}</b> points</span> of effort take away <span className="fig-n"><b>{chosen === null ? '0 %' : percent(chosen.cut)}</b></span> of the harm
        {chosen === null ? null : <span className="muted"> ({percentRange(chosen.cutInterval.p05, chosen.cutInterval.p95)}), by this model, which is our judgement. {searchWords(chosen)}</span>}
      </p>
      <figcaption>A point is an hour of work; money counts as points too. Sand: nine draws in ten.</figcaption>
      <DisclosureTable
        caption="Harm taken away by the best set for each effort"
        columns={[
          { head: 'Points', numeric: true, cell: (set) => String(set.budget) },
          { head: 'Taken away', numeric: true, cell: (set) => percent(set.cut) },
          { head: 'Range', numeric: true, cell: (set) => percentRange(set.cutInterval.p05, set.cutInterval.p95) },
          { head: 'By', cell: (set) => set.controls.map(titleOf).join('; ') },
        ]}
        rows={sets}
        rowKey={(set) => String(set.budget)}
      />
    </figure>
  );
}

/** Five words under the ruler, or as many as there are whole points. */
function marksTo(most: number): readonly string[] {
  const steps = [5, 4, 3, 2, 1].find((count) => most % count === 0) ?? 1;
  return Array.from({ length: steps + 1 }, (_, index) => String((most * index) / steps));
}

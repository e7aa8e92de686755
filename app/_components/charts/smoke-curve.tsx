import type { ReactNode } from 'react';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { smokeScene } from '@/lib/charts/smoke-curve';
import { smokePoints, smokeSpan, type SmokeThresholds } from '@/lib/charts/smoke-points';
import type { SmokeCase } from '@/lib/core/result';
import { durationWords, minutesSeconds } from '@/lib/wording/measures';
import { rounded } from '@/lib/wording/numbers';
import { ChartFigure } from './chart-figure';

interface SmokeCurveProps {
  readonly smoke: SmokeCase;
  readonly thresholds: SmokeThresholds;
  /** what the picture does not say; no figure of smoke stands without it */
  readonly caution: ReactNode;
}

/** Moments that the table gives, seconds. */
const MOMENTS: readonly number[] = [30, 60, 120, 300, 600];

/** Smoke in the room over time. It says where to be at the first smoke, never how long one may stay. */
export function SmokeCurve({ smoke, thresholds, caution }: SmokeCurveProps) {
  return (
    <ChartFigure
      wide={smokeScene(smoke, thresholds, WIDE)}
      narrow={smokeScene(smoke, thresholds, NARROW)}
      caption={
        <>
          Solid line: middle estimate; sand: from the least to the most the packs may give off; dashed lines are published values. The line at {durationWords(smoke.evacuationSeconds)} is when the last person is out, as you answered; it permits nothing.
          {caution}
        </>
      }
    >
      <DisclosureTable
        caption="Hydrogen fluoride in the well-mixed room, parts per million"
        columns={[
          { head: 'After the first smoke', cell: (point) => minutesSeconds(point.seconds) },
          { head: 'Low', numeric: true, cell: (point) => rounded(point.low) },
          { head: 'Middle', numeric: true, cell: (point) => rounded(point.mid) },
          { head: 'High', numeric: true, cell: (point) => rounded(point.high) },
        ]}
        rows={pointsAt(smoke)}
        rowKey={(point) => String(point.seconds)}
      />
    </ChartFigure>
  );
}

function pointsAt(smoke: SmokeCase) {
  const points = smokePoints(smoke, smokeSpan(smoke));
  return [...MOMENTS, smoke.releaseSeconds].sort((a, b) => a - b).flatMap((moment) => points.find((point) => point.seconds === moment) ?? []).filter((point, index, all) => all[index - 1]?.seconds !== point.seconds);
}

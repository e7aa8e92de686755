import { feet } from '@/lib/units/us-customary';
import { lengthWords, type LengthUnits } from '@/lib/wording/lengths';
import { line, text } from './marks';
import type { Mark } from './scene';

/** Lengths that a ruler or a grid goes by, m: round ones of what the school measures in. */
const STEPS: Readonly<Record<LengthUnits, readonly number[]>> = {
  metric: [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50],
  us: [0.5, 1, 2, 5, 10, 25, 50, 100].map((step) => feet(step)),
};

/** The shortest round length that is drawn at least so long. @param scale px per m; @param least px */
export function roundStep(scale: number, least: number, units: LengthUnits): number {
  const steps = STEPS[units];
  return steps.find((step) => step * scale >= least) ?? steps.at(-1) ?? 1;
}

/** A bar that says how long a round length is in the drawing it stands under. @param y of the bar */
export function scaleBar(x: number, y: number, scale: number, units: LengthUnits): readonly Mark[] {
  const step = roundStep(scale, 60, units);
  const end = x + step * scale;
  return [
    line('axis', x, y, end, y), line('axis', x, y - 5, x, y + 5), line('axis', end, y - 5, end, y + 5),
    text(end + 8, y + 5, lengthWords(step, units), 'ink-2'),
  ];
}

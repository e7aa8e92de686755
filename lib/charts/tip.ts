import type { LineMark } from './scene';

const LENGTH = 9;
const HALF = 4.5;

/** The arrow head at the end of a line, as a closed path to be filled. Empty for a line without length. */
export function tipPath({ x1, y1, x2, y2 }: Pick<LineMark, 'x1' | 'y1' | 'x2' | 'y2'>): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length === 0) return '';
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  const [baseX, baseY] = [x2 - ux * LENGTH, y2 - uy * LENGTH];
  return `M${point(x2, y2)}L${point(baseX - uy * HALF, baseY + ux * HALF)}L${point(baseX + uy * HALF, baseY - ux * HALF)}Z`;
}

function point(x: number, y: number): string { return `${x.toFixed(1)} ${y.toFixed(1)}`; }

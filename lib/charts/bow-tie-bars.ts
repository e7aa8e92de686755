import type { BowTieBar } from './bow-tie-model';
import { line, path, rect, text } from './marks';
import type { Mark } from './scene';

/** Length of a bar that takes away one power of ten, px, and the most any bar gets. */
const DECADE = 72;
const LONGEST = 2 * DECADE;
const SHORTEST = 4;
export const BAR_WIDTH = 12;
/** Least width of a thread that is still seen, px. */
const THINNEST = 1.4;
/** From the middle of a thread to the signs under its longest bar. */
const SIGN = 15;

/** Length of a bar; longer than two powers of ten it stops, and the table gives the figure. */
export function barLength(decades: number): number {
  return Math.min(LONGEST, Math.max(SHORTEST, decades * DECADE));
}

/** Half the height that a row of bars takes above its thread, px; below it its signs stand too. */
export function halfHeight(bars: readonly BowTieBar[]): number {
  return Math.max(8, ...bars.map((bar) => barLength(bar.decades) / 2));
}

/**
 * Width of a thread that lets this share past, px; falls with it but stays visible.
 * @param full width where everything passes
 */
export function threadWidth(passing: number, full: number): number {
  return Math.max(THINNEST, full * passing ** 0.3);
}

export interface Thread { readonly from: number; readonly to: number; readonly y: number; readonly full: number }

/** A thread with its bars, thinner behind each. It runs over a bar that is not there, unhindered. */
export function threadMarks(bars: readonly BowTieBar[], { from, to, y, full }: Thread): { readonly under: readonly Mark[]; readonly over: readonly Mark[] } {
  const step = bars.length === 0 ? 0 : (to - from) / bars.length;
  const missing: Mark[] = [];
  const thread: Mark[] = [];
  const over: Mark[] = [];
  let [x, passing] = [from, 1];
  bars.forEach((bar, index) => {
    const at = from + step * (index + 0.5);
    thread.push(line('thread', x, y, at, y, { width: threadWidth(passing, full) }));
    (bar.state === 'absent' ? missing : over).push(...barMarks(bar, at, y));
    over.push(text(at, y + halfHeight(bars) + SIGN, bar.sign, bar.first ? 'ember' : 'ink', { anchor: 'middle', strong: bar.first }));
    [x, passing] = [at, passing * bar.passing];
  });
  thread.push(line('thread', x, y, to, y, { width: threadWidth(passing, full) }));
  return { under: [...missing, ...thread], over };
}

/** Ink where it is in place, half ink where partly, sand where nobody is sure, hatched where it is not there. */
function barMarks(bar: BowTieBar, x: number, y: number): readonly Mark[] {
  const length = barLength(bar.decades);
  const [left, top] = [x - BAR_WIDTH / 2, y - length / 2];
  const ground = rect('paper', left, top, BAR_WIDTH, length);
  const edge = [left + 0.75, top + 0.75, BAR_WIDTH - 1.5, Math.max(1, length - 1.5)] as const;
  switch (bar.state) {
    case 'in place': return [rect('ink', left, top, BAR_WIDTH, length)];
    case 'partly': return [ground, rect('outline', ...edge), rect('ink', left, y, BAR_WIDTH, length / 2)];
    case 'not sure': return [ground, rect('grain-edge', ...edge)];
    default: return [path(bar.first ? 'hatch-todo' : 'hatch', hatching(left, top, length)), rect(bar.first ? 'todo' : 'absent', ...edge)];
  }
}

/** Slanted strokes inside a bar. */
function hatching(left: number, top: number, length: number): string {
  const at = (value: number): string => value.toFixed(1);
  let strokes = '';
  for (let start = 4 - BAR_WIDTH; start < length; start += 4) {
    const [from, to] = [Math.max(0, start), Math.min(length, start + BAR_WIDTH)];
    strokes += `M${at(left + from - start)} ${at(top + from)}L${at(left + to - start)} ${at(top + to)}`;
  }
  return strokes;
}

import type { BowTieBar } from './bow-tie-model';
import { line, path, rect, text } from './marks';
import type { Mark } from './scene';

/** Length of a bar that takes away one power of ten, px, and the most any bar gets. */
const DECADE = 56;
const LONGEST = 112;
const SHORTEST = 3;
export const BAR_WIDTH = 11;
/** Width of a thread through which everything passes, and the least that is still seen. */
const THREAD = 9;
const THINNEST = 1.4;

/** Length of a bar; longer than two powers of ten it stops, and the table gives the figure. */
export function barLength(decades: number): number {
  return Math.min(LONGEST, Math.max(SHORTEST, decades * DECADE));
}

/** Width of a thread that lets this share past, px; falls with it but stays visible. */
export function threadWidth(passing: number): number {
  return Math.max(THINNEST, THREAD * passing ** 0.3);
}

/** One control across a thread at y, its sign under it. */
export function barMarks(bar: BowTieBar, x: number, y: number): readonly Mark[] {
  const length = barLength(bar.decades);
  const [left, top] = [x - BAR_WIDTH / 2, y - length / 2];
  const sign = text(x, y + Math.max(length / 2, 7) + 14, bar.sign, bar.first ? 'ember' : 'ink', { anchor: 'middle', halo: true, strong: bar.first });
  const ground = rect('paper', left, top, BAR_WIDTH, length);
  switch (bar.state) {
    case 'in place': return [rect('ink', left, top, BAR_WIDTH, length), sign];
    case 'partly': return [ground, rect('outline', left + 0.75, top + 0.75, BAR_WIDTH - 1.5, Math.max(1, length - 1.5)), rect('ink', left, y, BAR_WIDTH, length / 2), sign];
    case 'not sure': return [ground, rect('grain-edge', left + 0.75, top + 0.75, BAR_WIDTH - 1.5, Math.max(1, length - 1.5)), sign];
    default: return [...hatched(bar, left, top, length), sign];
  }
}

/** What is not there: hatched, so that it is never read as protection. The thread runs on behind it. */
function hatched(bar: BowTieBar, left: number, top: number, length: number): readonly Mark[] {
  const strokes: string[] = [];
  for (let start = -BAR_WIDTH; start < length; start += 5) {
    const [from, to] = [Math.max(0, start), Math.min(length, start + BAR_WIDTH)];
    if (to > from) strokes.push(`M${left + from - start} ${top + from}L${left + to - start} ${top + to}`);
  }
  return [path(bar.first ? 'ember' : 'tick', strokes.join(''), 1), rect(bar.first ? 'todo' : 'absent', left, top, BAR_WIDTH, length)];
}

/** A thread with its bars, thinner behind each; returns its marks and what passes at the end. */
export function threadMarks(bars: readonly BowTieBar[], from: number, to: number, y: number, start: number): { readonly under: readonly Mark[]; readonly over: readonly Mark[]; readonly passing: number } {
  const step = bars.length === 0 ? 0 : (to - from) / bars.length;
  const under: Mark[] = [];
  const over: Mark[] = [];
  let [x, passing] = [from, start];
  bars.forEach((bar, index) => {
    const at = from + step * (index + 0.5);
    under.push(line('thread', x, y, at, y, { width: threadWidth(passing) }));
    over.push(...barMarks(bar, at, y));
    [x, passing] = [at, passing * bar.passing];
  });
  under.push(line('thread', x, y, to, y, { width: threadWidth(passing) }));
  return { under, over, passing };
}

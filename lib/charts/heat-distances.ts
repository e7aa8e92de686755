import type { HeatCase, HeatLevel } from '@/lib/core/result';
import { metres } from '@/lib/wording/measures';
import { plumb } from './frequency-ruler';
import { line, rect, text, textLines } from './marks';
import { type ChartWidth, LINE_HEIGHT, type Mark, type Scene, WIDE } from './scene';
import { wrap } from './text-width';

/** What stands around the packs, m; null where it is not known or there is none. */
export interface Surroundings {
  readonly person: number | null;
  readonly combustible: number | null;
  /** free height above the packs */
  readonly clearHeight: number | null;
}

/** Height left for flame and shelf, px; what is higher than the scale allows is said, not drawn. */
const MOST_HEIGHT = 190;
const ORIGIN = 24;
const PACK = { width: 0.07, height: 0.035 };

/**
 * The fire of the packs and what stands around them, seen from the side and to one scale: flame upward,
 * distances to the right. Sand from low to high yields, a plumb at the middle.
 */
export function heatScene(heat: HeatCase, around: Surroundings, width: ChartWidth): Scene {
  const plan = planOf(heat, around, width);
  return {
    width,
    height: plan.rowsFrom + 3 * plan.rowHeight + 30,
    title: finding(heat, around),
    marks: [...flame(plan, heat), ...shelf(plan, around), ...table(plan), ...standing(plan, around, heat), ...reaches(plan, heat), ...ruler(plan)],
  };
}

function finding(heat: HeatCase, around: Surroundings): string {
  const reach = `Flames about ${metres(heat.mid.flameHeight)} high; wood may catch fire within ${metres(heat.mid.ignitionDistance)}, bare skin hurts within ${metres(heat.mid.painDistance)}.`;
  const burns = around.combustible === null ? '' : ` The nearest thing that burns is ${metres(around.combustible)} away.`;
  return `${reach}${burns} Sparks and burning parts fly further.`;
}

interface Plan { readonly width: ChartWidth; readonly scale: number; readonly span: number; readonly ground: number; readonly rowsFrom: number; readonly rowHeight: number; readonly cutHeight: boolean }

function planOf(heat: HeatCase, around: Surroundings, width: ChartWidth): Plan {
  const span = 1.12 * Math.max(0.5, heat.high.painDistance, heat.high.ignitionDistance, around.person ?? 0, around.combustible ?? 0);
  const byWidth = (width - ORIGIN - 10) / span;
  const needed = Math.max(heat.high.flameHeight, 0.3);
  const withShelf = Math.max(needed, around.clearHeight ?? 0);
  const cutHeight = withShelf > 2.5 * needed;
  const tallest = 1.08 * (cutHeight ? needed : withShelf);
  const scale = Math.min(byWidth, MOST_HEIGHT / tallest);
  const ground = 34 + Math.max(96, tallest * scale);
  return { width, scale, span, ground, rowsFrom: ground + 30, rowHeight: width === WIDE ? 30 : 46, cutHeight };
}

const right = (plan: Plan, distance: number): number => Math.min(plan.width - 8, ORIGIN + distance * plan.scale);

function flame(plan: Plan, heat: HeatCase): readonly Mark[] {
  const y = (level: HeatLevel): number => plan.ground - level.flameHeight * plan.scale;
  const packs = PACK.width * plan.scale;
  return [
    rect('grain', ORIGIN - 10, y(heat.high), 20, Math.max(2, y(heat.low) - y(heat.high))),
    line('curve', ORIGIN - 10, y(heat.mid), ORIGIN + 10, y(heat.mid)),
    line('thread', ORIGIN, y(heat.mid), ORIGIN, plan.ground, { width: 1.2 }),
    rect('ink', ORIGIN - packs / 2, plan.ground - Math.max(6, PACK.height * plan.scale), packs, Math.max(6, PACK.height * plan.scale)),
    text(ORIGIN + 18, y(heat.mid) + 4.5, `flames ${metres(heat.mid.flameHeight)}, ${metres(heat.low.flameHeight)} to ${metres(heat.high.flameHeight)}`, 'ink', { halo: true }),
  ];
}

function shelf(plan: Plan, { clearHeight }: Surroundings): readonly Mark[] {
  if (clearHeight === null) return [];
  const words = `${metres(clearHeight)} free above`;
  if (plan.cutHeight) return [text(ORIGIN + 18, 14, `${words}, higher than drawn`, 'ink-2')];
  const y = plan.ground - clearHeight * plan.scale;
  return [line('limit', 0, y, right(plan, plan.span * 0.5), y), text(right(plan, plan.span * 0.5) + 8, y + 4.5, words)];
}

function table(plan: Plan): readonly Mark[] {
  return [line('axis', 0, plan.ground, plan.width, plan.ground)];
}

interface Thing { readonly at: number; readonly words: string; readonly presses: boolean }

/** A thing within the reach of its hazard presses; the nearer one is named above the farther. */
function standing(plan: Plan, around: Surroundings, heat: HeatCase): readonly Mark[] {
  const things: Thing[] = [];
  if (around.combustible !== null) things.push({ at: around.combustible, words: `what could burn, ${metres(around.combustible)}`, presses: around.combustible <= heat.high.ignitionDistance });
  if (around.person !== null) things.push({ at: around.person, words: `nearest person, ${metres(around.person)}`, presses: around.person <= heat.high.painDistance });
  return things.sort((a, b) => a.at - b.at).flatMap((thing, index) => {
    const x = right(plan, thing.at);
    const toLeft = x > plan.width * 0.55;
    const top = plan.ground - 62 + index * 24;
    const role = thing.presses ? 'ember' : 'ink';
    return [line(thing.presses ? 'ember' : 'axis', x, top - 10, x, plan.ground), text(toLeft ? x - 7 : x + 7, top, thing.words, role, { anchor: toLeft ? 'end' : 'start', halo: true, strong: thing.presses })];
  });
}

function reaches(plan: Plan, heat: HeatCase): readonly Mark[] {
  const rows: readonly (readonly [string, (level: HeatLevel) => number])[] = [
    ['wood may catch fire', (level) => level.ignitionDistance],
    ['bare skin hurts', (level) => level.painDistance],
  ];
  return rows.flatMap(([words, of], index) => {
    const y = plan.rowsFrom + index * plan.rowHeight + 18;
    const [low, high, mid] = [right(plan, of(heat.low)), right(plan, of(heat.high)), right(plan, of(heat.mid))];
    const label = `${words} within ${metres(of(heat.mid))}, ${metres(of(heat.low))} to ${metres(of(heat.high))}`;
    const inLine = plan.width === WIDE;
    const lines = wrap(label, inLine ? plan.width - high - 16 : plan.width, 1);
    return [
      line('tick', ORIGIN, y, high, y),
      rect('grain', low, y - 15, Math.max(2, high - low), 14),
      plumb(mid, y, 4),
      ...textLines(inLine ? high + 12 : 0, inLine ? y - 3 : y + LINE_HEIGHT + 1, lines),
    ];
  });
}

function ruler(plan: Plan): readonly Mark[] {
  const y = plan.rowsFrom + 2 * plan.rowHeight + 22;
  const step = plan.span > 4 ? 1 : plan.span > 1.6 ? 0.5 : plan.span > 0.8 ? 0.2 : 0.1;
  const most = Math.floor((plan.width - 8 - ORIGIN) / plan.scale / step);
  const ticks = Array.from({ length: most + 1 }, (_, index) => Math.round(index * step * 10) / 10);
  const every = ticks.length > (plan.width === WIDE ? 13 : 7) ? 2 : 1;
  return [
    line('axis', ORIGIN, y, right(plan, (ticks.at(-1) ?? 0)), y),
    ...ticks.flatMap((tick, index) => [line('axis', right(plan, tick), y, right(plan, tick), y + 6), ...(index % every === 0 ? [text(right(plan, tick), y + 21, index === 0 ? '0 m' : String(tick), 'ink-2', { anchor: 'middle' })] : [])]),
  ];
}

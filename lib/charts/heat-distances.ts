import type { HeatCase, HeatLevel } from '@/lib/core/result';
import { metres, metresRange } from '@/lib/wording/measures';
import { plumb } from './frequency-ruler';
import { circle, line, path, rect, text } from './marks';
import { type ChartWidth, LINE_HEIGHT, type Mark, type Scene } from './scene';
import { textWidth } from './text-width';

/** What stands around the packs, m; null where it is not known or there is none. */
export interface Surroundings {
  readonly person: number | null;
  readonly combustible: number | null;
  /** free height above the packs */
  readonly clearHeight: number | null;
}

/** Height left for flame and shelf, px; what is higher than the scale allows is said, not drawn. */
const MOST_HEIGHT = 190;
const ORIGIN = 30;
const SIDE = 10;
/** A pack is about this large, m. */
const PACK = { width: 0.07, height: 0.035 };
const FLAME = 12;
const HEAD = 30;

/**
 * The fire of the packs and what stands around them, seen from the side and to one scale: flame upward,
 * distances to the right. Sand from low to high yields, a plumb at the middle.
 */
export function heatScene(heat: HeatCase, around: Surroundings, width: ChartWidth): Scene {
  const plan = planOf(heat, around, width);
  return {
    width,
    height: plan.rowsFrom + 2 * plan.rowHeight + 50,
    title: finding(heat, around),
    marks: [...shelf(plan, around, heat), ...flame(plan, heat), ...standing(plan, around, heat), line('axis', 0, plan.ground, width, plan.ground), ...reaches(plan, heat), ...ruler(plan)],
  };
}

function finding(heat: HeatCase, around: Surroundings): string {
  const reach = `Flames about ${metres(heat.mid.flameHeight)} high; wood may catch fire within ${metres(heat.mid.ignitionDistance)}, bare skin hurts within ${metres(heat.mid.painDistance)}.`;
  const burns = around.combustible === null ? '' : ` The nearest thing that burns is ${metres(around.combustible)} away.`;
  return `${reach}${burns} Sparks and burning parts fly further.`;
}

interface Plan {
  readonly width: ChartWidth;
  /** px per m, across and upward alike */
  readonly scale: number;
  /** y of the table's top */
  readonly ground: number;
  readonly rowsFrom: number;
  readonly rowHeight: number;
  /** words stand behind their bars, not under them */
  readonly wordsBehind: boolean;
  readonly shelfIsHigher: boolean;
}

function planOf(heat: HeatCase, around: Surroundings, width: ChartWidth): Plan {
  const across = 1.1 * Math.max(0.5, heat.high.painDistance, heat.high.ignitionDistance, around.person ?? 0, around.combustible ?? 0);
  const flames = Math.max(heat.high.flameHeight, 0.3);
  const shelfIsHigher = (around.clearHeight ?? 0) > 2.5 * flames;
  const upward = 1.1 * (shelfIsHigher ? flames : Math.max(flames, around.clearHeight ?? 0));
  const scale = Math.min((width - ORIGIN - SIDE) / across, MOST_HEIGHT / upward);
  const ground = HEAD + Math.max(110, upward * scale);
  const wordsBehind = reachesOf(heat).every((reach) => fitsBehind(reach, width, ORIGIN + reach.high * scale));
  return { width, scale, ground, rowsFrom: ground + 22, rowHeight: wordsBehind ? 34 : 48, wordsBehind, shelfIsHigher };
}

const acrossTo = (plan: Plan, distance: number): number => Math.min(plan.width - SIDE, ORIGIN + distance * plan.scale);
const upTo = (plan: Plan, height: number): number => plan.ground - height * plan.scale;

function flame(plan: Plan, heat: HeatCase): readonly Mark[] {
  const [low, mid, high] = [upTo(plan, heat.low.flameHeight), upTo(plan, heat.mid.flameHeight), upTo(plan, heat.high.flameHeight)];
  const pack = { width: Math.max(10, PACK.width * plan.scale), height: Math.max(6, PACK.height * plan.scale) };
  const words = `flames ${metres(heat.mid.flameHeight)}`;
  const range = metresRange(heat.low.flameHeight, heat.high.flameHeight);
  const y = flameWordsY(plan, heat);
  return [
    rect('grain', ORIGIN - FLAME, high, 2 * FLAME, Math.max(2, low - high)),
    line('curve', ORIGIN - FLAME, mid, ORIGIN + FLAME, mid),
    path('lesser', `M${(ORIGIN - FLAME).toFixed(1)} ${low.toFixed(1)}V${(plan.ground - pack.height).toFixed(1)}M${(ORIGIN + FLAME).toFixed(1)} ${low.toFixed(1)}V${(plan.ground - pack.height).toFixed(1)}`),
    rect('ink', ORIGIN - pack.width / 2, plan.ground - pack.height, pack.width, pack.height),
    text(ORIGIN + FLAME + 8, y, words, 'ink', { halo: true, strong: true }),
    text(ORIGIN + FLAME + 8, y + LINE_HEIGHT, range, 'ink-2', { halo: true }),
  ];
}

/** First line of the flame's words: beside its lower half, above those of the things on the table. */
const flameWordsY = (plan: Plan, heat: HeatCase): number => Math.min(plan.ground - 78, upTo(plan, heat.mid.flameHeight) + 22);

function shelf(plan: Plan, { clearHeight }: Surroundings, heat: HeatCase): readonly Mark[] {
  if (clearHeight === null) return [];
  const words = `${metres(clearHeight)} free above`;
  if (plan.shelfIsHigher) return [text(ORIGIN + FLAME + 8, 13, `${words}, higher than drawn`, 'ink-2')];
  const presses = clearHeight <= heat.high.flameHeight;
  const role = presses ? 'ember' : 'ink';
  const y = upTo(plan, clearHeight);
  const end = plan.width * 0.42;
  // beside the flame's words or those of the things there is no room; then these go to the top
  const label = y + 2 > flameWordsY(plan, heat) - LINE_HEIGHT ? text(ORIGIN + FLAME + 8, 13, words, role, { strong: presses }) : text(end + 8, y + 2, words, role, { strong: presses });
  return [rect(role, 0, y - 5, end, 5), label];
}

interface Thing { readonly at: number; readonly words: string; readonly presses: boolean; readonly person: boolean }

/** A thing within the reach of its hazard presses. */
function standing(plan: Plan, around: Surroundings, heat: HeatCase): readonly Mark[] {
  const things: Thing[] = [];
  if (around.combustible !== null) things.push({ at: around.combustible, words: `what could burn, ${metres(around.combustible)}`, presses: around.combustible <= heat.high.ignitionDistance, person: false });
  if (around.person !== null) things.push({ at: around.person, words: `nearest person, ${metres(around.person)}`, presses: around.person <= heat.high.painDistance, person: true });
  return things.sort((a, b) => a.at - b.at).flatMap((thing, index) => thingMarks(plan, thing, plan.ground - 14 - (things.length - 1 - index) * 22));
}

/** A block for a thing, a stem with a head for a person; words to the side where there is room. */
function thingMarks(plan: Plan, thing: Thing, y: number): readonly Mark[] {
  const x = acrossTo(plan, thing.at);
  const role = thing.presses ? 'ember' : 'ink';
  const after = thing.person ? 12 : 24;
  const room = textWidth(thing.words, thing.presses);
  const toLeft = x + after + room > plan.width;
  const shape = thing.person
    ? [line(thing.presses ? 'ember' : 'axis', x, plan.ground - 40, x, plan.ground), circle(role, x, plan.ground - 46, 6)]
    : [rect('outline', x, plan.ground - 44, 16, 44), path('hatch', hatching(x, plan.ground - 44)), line(thing.presses ? 'ember' : 'curve', x, plan.ground - 44, x, plan.ground)];
  return [...shape, text(toLeft ? Math.max(room, x - 10) : x + after, y, thing.words, role, { anchor: toLeft ? 'end' : 'start', halo: true, strong: thing.presses })];
}

function hatching(x: number, y: number): string {
  return [8, 20, 32, 44].map((offset) => `M${x.toFixed(1)} ${(y + offset).toFixed(1)}L${(x + 16).toFixed(1)} ${(y + Math.max(0, offset - 16)).toFixed(1)}`).join('');
}

interface Reach { readonly words: string; readonly range: string; readonly low: number; readonly mid: number; readonly high: number }

function reachesOf(heat: HeatCase): readonly Reach[] {
  const rows: readonly (readonly [string, (level: HeatLevel) => number])[] = [
    ['wood may catch fire within', (level) => level.ignitionDistance],
    ['bare skin hurts within', (level) => level.painDistance],
  ];
  return rows.map(([words, of]) => ({ words: `${words} ${metres(of(heat.mid))}`, range: metresRange(of(heat.low), of(heat.high)), low: of(heat.low), mid: of(heat.mid), high: of(heat.high) }));
}

/** Whether the words of a reach find room behind its bar. */
function fitsBehind(reach: Reach, width: number, end: number): boolean {
  return end + 16 + textWidth(reach.words, true) + 10 + textWidth(reach.range) < width;
}

function reaches(plan: Plan, heat: HeatCase): readonly Mark[] {
  return reachesOf(heat).flatMap((reach, index) => {
    const y = plan.rowsFrom + index * plan.rowHeight + 18;
    const [low, high] = [acrossTo(plan, reach.low), acrossTo(plan, reach.high)];
    const [x, base] = plan.wordsBehind ? [high + 14, y - 3] : [0, y + LINE_HEIGHT + 1];
    return [
      line('tick', ORIGIN, y, high, y),
      rect('grain', low, y - 15, Math.max(2, high - low), 14),
      plumb(acrossTo(plan, reach.mid), y, 4),
      text(x, base, reach.words, 'ink', { strong: true }),
      text(x + textWidth(reach.words, true) + 10, base, reach.range, 'ink-2'),
    ];
  });
}

function ruler(plan: Plan): readonly Mark[] {
  const y = plan.rowsFrom + 2 * plan.rowHeight + 14;
  const length = (plan.width - SIDE - ORIGIN) / plan.scale;
  const step = [0.1, 0.2, 0.5, 1, 2, 5].find((one) => (length / one) * 44 <= plan.width) ?? 10;
  const ticks = Array.from({ length: Math.floor(length / step) + 1 }, (_, index) => Math.round(index * step * 10) / 10);
  return [
    line('axis', ORIGIN, y, acrossTo(plan, ticks.at(-1) ?? 0), y),
    ...ticks.flatMap((tick, index) => [line('axis', acrossTo(plan, tick), y, acrossTo(plan, tick), y + 6), text(acrossTo(plan, tick), y + 21, index === 0 ? '0 m' : String(tick), 'ink-2', { anchor: 'middle' })]),
  ];
}

import { lengthWords, type LengthUnits } from '@/lib/wording/lengths';
import { line, rect, text } from './marks';
import { roundStep, scaleBar } from './scale-ruler';
import { type Mark, type Scene, WIDE } from './scene';
import { textWidth } from './text-width';

/** A room whose length and width are known, m. */
export interface PlanRoom {
  /** by which it is found in the table beside the drawing */
  readonly letter: string;
  /** what it is for, in a word or two of ours: names that people typed stand in the table */
  readonly use: string;
  readonly length: number;
  readonly width: number;
}

const WALL = 4;
const GAP = 34;
/** Above a room its length, under it its letter. */
const ABOVE = 24;
const BELOW = 34;
/** Height left for all rooms, px. */
const MOST_HEIGHT = 400;
const SCALES = [60, 50, 40, 32, 26, 21, 17, 14, 11, 9, 7, 5.5, 4.5, 3.6, 2.8, 2.2, 1.8] as const;
const GRID = 12;

/**
 * Rooms from above, all to one scale, with a grid to measure by. What stands where in them is not known to us, so
 * nothing is drawn inside; rooms without a size are the caller's to name, never to be drawn.
 * @param rooms at least one; @throws where there is none, or a size is not above 0
 */
export function roomPlanScene(rooms: readonly PlanRoom[], units: LengthUnits): Scene {
  if (rooms.length === 0 || rooms.some(({ length, width }) => !(length > 0 && width > 0))) throw new Error('a plan has rooms, each with a length and a width');
  const placed = layout(rooms, SCALES.find((scale) => layout(rooms, scale, units).height <= MOST_HEIGHT) ?? 1.8, units);
  const sizes = rooms.map(({ letter, use, length, width }) => `${letter}, ${use}, ${lengthWords(length, units)} by ${lengthWords(width, units)}`);
  return {
    width: WIDE, height: placed.height + 40,
    title: `From above, to one scale: ${sizes.join('; ')}.`,
    marks: [
      ...placed.rooms.flatMap((one) => roomMarks(one, placed.scale, units)),
      ...scaleBar(WALL, placed.height + 20, placed.scale, units),
      text(WIDE, placed.height + 25, `each square ${lengthWords(roundStep(placed.scale, GRID, units), units)}`, 'ink-2', { anchor: 'end' }),
    ],
  };
}

interface Placed { readonly room: PlanRoom; readonly x: number; readonly y: number }
interface Layout { readonly scale: number; readonly height: number; readonly rooms: readonly Placed[] }

/** One beside the other, and on into the next row where there is no more space. */
function layout(rooms: readonly PlanRoom[], scale: number, units: LengthUnits): Layout {
  const placed: Placed[] = [];
  let [x, y, tallest] = [0, 0, 0];
  for (const room of rooms) {
    const width = Math.max(room.length * scale + 2 * WALL + 8 + textWidth(lengthWords(room.width, units)), textWidth(label(room), true));
    if (width > WIDE) return { scale, height: Number.POSITIVE_INFINITY, rooms: [] };
    if (x > 0 && x + width > WIDE) [x, y, tallest] = [0, y + tallest + 12, 0];
    placed.push({ room, x, y });
    x += width + GAP;
    tallest = Math.max(tallest, ABOVE + room.width * scale + 2 * WALL + BELOW);
  }
  return { scale, height: y + tallest, rooms: placed };
}

function roomMarks({ room, x, y }: Placed, scale: number, units: LengthUnits): readonly Mark[] {
  const [long, wide] = [room.length * scale, room.width * scale];
  const [left, top] = [x + WALL, y + ABOVE + WALL];
  return [
    rect('ink', x, top - WALL, long + 2 * WALL, wide + 2 * WALL),
    rect('paper', left, top, long, wide),
    ...grid(left, top, long, wide, roundStep(scale, GRID, units) * scale),
    text(left + Math.max(long / 2, textWidth(lengthWords(room.length, units)) / 2), top - WALL - 7, lengthWords(room.length, units), 'ink-2', { anchor: 'middle' }),
    text(left + long + WALL + 7, top + wide / 2 + 5, lengthWords(room.width, units), 'ink-2'),
    text(x, top + wide + WALL + 18, label(room), 'ink', { strong: true }),
  ];
}

const label = ({ letter, use }: PlanRoom): string => `${letter} ${use}`;

function grid(left: number, top: number, long: number, wide: number, step: number): readonly Mark[] {
  const inside = (size: number): readonly number[] => Array.from({ length: Math.max(0, Math.ceil(size / step) - 1) }, (_, index) => (index + 1) * step);
  return [
    ...inside(long).map((at) => line('grid', left + at, top, left + at, top + wide)),
    ...inside(wide).map((at) => line('grid', left, top + at, left + long, top + at)),
  ];
}

import { discIsFree, outward, type Segment, type Taken, wayCost } from './placement';

/** Where a risk wants to stand: its row is fixed, along its column it may give way. */
export interface Wish {
  readonly id: string;
  readonly y: number;
  readonly column: Column;
  /** where its ring wants to stand; null when nothing moves */
  readonly after: { readonly y: number; readonly column: Column } | null;
}
export interface Column { readonly middle: number; readonly half: number }
interface Point { readonly x: number; readonly y: number }
/** The end of a way, and the point that bends it (of a quadratic curve). */
export interface After extends Point { readonly bend: Point }
export interface Spot extends Point { readonly id: string; readonly after: After | null }

export interface Sizes { readonly disc: number; readonly ring: number }

const STEP = 4;
const PIECES = 8;

/**
 * Places discs first, then the rings at the end of their ways: no disc or ring covers another or a grade's
 * mark, and of the free places for a ring the one whose way crosses least is taken. A risk without a free
 * place is left out of the answer.
 * @param wishes in the order in which they choose
 * @param boxes marks that have to stay clear
 */
export function placeRisks(wishes: readonly Wish[], boxes: Taken['boxes'], sizes: Sizes): readonly Spot[] {
  const taken: Taken = { discs: [], boxes, paths: [] };
  const discs = wishes.flatMap((wish) => {
    const x = freeX(wish.column, sizes.disc, (at) => discIsFree(at, wish.y, sizes.disc, taken));
    if (x === null) return [];
    taken.discs.push({ x, y: wish.y, r: sizes.disc });
    return [{ wish, x }];
  });
  return discs.flatMap(({ wish, x }): readonly Spot[] => {
    if (wish.after === null) return [{ id: wish.id, x, y: wish.y, after: null }];
    const ring = ringOf({ x, y: wish.y }, wish.after, sizes, taken);
    if (ring === null) return [];
    taken.discs.push({ x: ring.x, y: ring.y, r: sizes.ring });
    taken.paths.push(...segments({ x, y: wish.y }, ring));
    return [{ id: wish.id, x, y: wish.y, after: ring }];
  });
}

function freeX(column: Column, r: number, isFree: (x: number) => boolean): number | null {
  const offset = outward(column.half - r - 2, STEP).find((one) => isFree(column.middle + one));
  return offset === undefined ? null : column.middle + offset;
}

/** How far a way may swing out of the straight line, px; straight is tried first. */
const SWINGS = [0, 14, -14, 26, -26];

/** The free place and the swing whose way disturbs least; among equals the straighter, then the nearer to the middle. */
function ringOf(from: Point, wish: NonNullable<Wish['after']>, sizes: Sizes, taken: Taken): After | null {
  const places = outward(wish.column.half - sizes.ring - 3, STEP)
    .map((offset) => ({ x: wish.column.middle + offset, y: wish.y }))
    .filter((place) => discIsFree(place.x, place.y, sizes.ring, { ...taken, paths: [] }) && Math.hypot(place.x - from.x, place.y - from.y) > sizes.disc + sizes.ring + 10);
  const ways = places.flatMap((place) => SWINGS.map((swing) => ({ ...place, bend: bendOf(from, place, swing), swing })));
  const cost = (way: (typeof ways)[number]): number => wayCost(segments(from, way), taken) + Math.abs(way.swing) / 100 + Math.abs(way.x - wish.column.middle) / 1000;
  return ways.reduce<(typeof ways)[number] | null>((best, way) => (best === null || cost(way) < cost(best) ? way : best), null);
}

function bendOf(from: Point, to: Point, swing: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (from.x + to.x) / 2 - ((to.y - from.y) / length) * swing, y: (from.y + to.y) / 2 + ((to.x - from.x) / length) * swing };
}

/** The curve as short straight pieces, to see what it touches. */
function segments(from: Point, to: After): readonly Segment[] {
  const at = (t: number): Point => ({
    x: (1 - t) ** 2 * from.x + 2 * t * (1 - t) * to.bend.x + t ** 2 * to.x,
    y: (1 - t) ** 2 * from.y + 2 * t * (1 - t) * to.bend.y + t ** 2 * to.y,
  });
  return Array.from({ length: PIECES }, (_, index) => {
    const [one, two] = [at(index / PIECES), at((index + 1) / PIECES)];
    return { x1: one.x, y1: one.y, x2: two.x, y2: two.y };
  });
}

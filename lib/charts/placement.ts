/** What is drawn already and has to stay clear. */
export interface Taken {
  readonly discs: { readonly x: number; readonly y: number; readonly r: number }[];
  readonly boxes: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }[];
  readonly paths: Segment[];
}
export interface Segment { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }

/** Least clear space between two things, px. */
const GAP = 2;

/** Whether a disc touches nothing that is drawn. */
export function discIsFree(x: number, y: number, r: number, taken: Taken): boolean {
  return taken.discs.every((disc) => Math.hypot(disc.x - x, disc.y - y) >= disc.r + r + GAP)
    && taken.boxes.every((box) => distanceToBox(x, y, box) >= r + GAP / 2)
    && taken.paths.every((segment) => distanceToSegment(x, y, segment) >= r + GAP);
}

/** How much a way disturbs: a disc that it runs under counts for more than a way that it crosses. */
export function wayCost(way: readonly Segment[], taken: Taken): number {
  const start = way[0];
  const under = taken.discs.filter((disc) => (disc.x !== start?.x1 || disc.y !== start.y1) && way.some((segment) => distanceToSegment(disc.x, disc.y, segment) < disc.r + GAP)).length;
  const crossed = taken.paths.filter((other) => way.some((segment) => cross(segment, other))).length;
  const marks = taken.boxes.filter((box) => way.some((segment) => distanceToBox((segment.x1 + segment.x2) / 2, (segment.y1 + segment.y2) / 2, box) < GAP)).length;
  return 3 * under + 2 * marks + crossed;
}

/** Distances from the middle to try: the middle, then one step to either side, and so on outward. */
export function outward(most: number, step: number): readonly number[] {
  const offsets = [0];
  for (let offset = step; offset <= most; offset += step) offsets.push(offset, -offset);
  return offsets;
}

function distanceToSegment(x: number, y: number, { x1, y1, x2, y2 }: Segment): number {
  const length = (x2 - x1) ** 2 + (y2 - y1) ** 2;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / length));
  return Math.hypot(x - x1 - along * (x2 - x1), y - y1 - along * (y2 - y1));
}

function distanceToBox(x: number, y: number, box: Taken['boxes'][number]): number {
  return Math.hypot(Math.max(box.x - x, 0, x - box.x - box.width), Math.max(box.y - y, 0, y - box.y - box.height));
}

function cross(a: Segment, b: Segment): boolean {
  const side = (s: Segment, x: number, y: number): number => Math.sign((s.x2 - s.x1) * (y - s.y1) - (s.y2 - s.y1) * (x - s.x1));
  return side(a, b.x1, b.y1) !== side(a, b.x2, b.y2) && side(b, a.x1, a.y1) !== side(b, a.x2, a.y2);
}

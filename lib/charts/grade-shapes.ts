import type { Grade } from '@/lib/core/result';

/** One stroke or one filled outline in a box of 16 by 16. */
export type ShapePart =
  | { readonly kind: 'ring'; readonly radius: number; readonly stroke: number }
  | { readonly kind: 'fill'; readonly path: string };

/** Side of the box that the shapes below are drawn in. */
export const GRADE_BOX = 16;

/**
 * The four grades as shapes, for screen and paper: open ring, ring half full, triangle, octagon. They
 * differ without colour. The octagon has broad corners and a bar and a dot cut out of it (the inner
 * outlines run the other way round), so that at 12 px nobody takes it for a disc.
 */
export const GRADE_SHAPES: Readonly<Record<Grade | 'none', readonly ShapePart[]>> = {
  low: [{ kind: 'ring', radius: 5.8, stroke: 2 }],
  moderate: [{ kind: 'ring', radius: 5.8, stroke: 2 }, { kind: 'fill', path: 'M2.2 8a5.8 5.8 0 0 0 11.6 0z' }],
  high: [{ kind: 'fill', path: 'M8 1.2 15.3 14H.7z' }],
  extreme: [{ kind: 'fill', path: 'M4.3.3h7.4l4 4v7.4l-4 4H4.3l-4-4V4.3zM6.7 3v6h2.6V3zM6.7 10.6v2.5h2.6v-2.5z' }],
  none: [{ kind: 'fill', path: 'M2.5 7h11v2h-11z' }],
};

import type { StepSize } from '@/lib/papers/paper';

/** Side of the drawing beside a step, points. */
export const STEP_PICTURE: Readonly<Record<StepSize, number>> = { huge: 68, large: 66, plain: 64, small: 64 };

/** Height of a row of places for initials, points: enough for a pen. */
export const INITIALS_ROW = 20;

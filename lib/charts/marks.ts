import type { CellRole, CircleMark, FillRole, GradeShapeMark, LineMark, LineRole, PathMark, RectMark, TextMark, TextRole } from './scene';
import { LINE_HEIGHT } from './scene';

/**
 * Hundredths of a pixel. Also what makes server and browser agree: their logarithms differ in the last digit,
 * and React compares attributes to the letter.
 */
const px = (value: number): number => Math.round(value * 100) / 100;

/** Short makers of marks, so that a chart reads as a drawing. */
export const line = (role: LineRole, x1: number, y1: number, x2: number, y2: number, more: Pick<LineMark, 'width'> = {}): LineMark =>
  ({ kind: 'line', role, x1: px(x1), y1: px(y1), x2: px(x2), y2: px(y2), ...(more.width === undefined ? {} : { width: px(more.width) }) });

/** @param d of an SVG path; made by d3-shape, which rounds to thousandths, or by hand */
export const path = (role: LineRole | FillRole, d: string, width?: number): PathMark => ({ kind: 'path', role, d, ...(width === undefined ? {} : { width: px(width) }) });

export const rect = (role: FillRole | CellRole, x: number, y: number, width: number, height: number): RectMark =>
  ({ kind: 'rect', role, x: px(x), y: px(y), width: px(width), height: px(height) });

export const circle = (role: FillRole, cx: number, cy: number, r: number): CircleMark => ({ kind: 'circle', role, cx: px(cx), cy: px(cy), r });

export const gradeShape = (grade: GradeShapeMark['grade'], x: number, y: number, size: number, on: GradeShapeMark['on']): GradeShapeMark =>
  ({ kind: 'grade', grade, x: px(x), y: px(y), size, on });

type TextLook = Partial<Pick<TextMark, 'anchor' | 'strong' | 'halo'>>;

export const text = (x: number, y: number, words: string, role: TextRole = 'ink', look: TextLook = {}): TextMark =>
  ({ kind: 'text', role, x: px(x), y: px(y), text: words, anchor: 'start', ...look });

/** Several lines of text; y is the base line of the first. */
export function textLines(x: number, y: number, lines: readonly string[], role: TextRole = 'ink', look: TextLook = {}): readonly TextMark[] {
  return lines.map((words, index) => text(x, y + index * LINE_HEIGHT, words, role, look));
}

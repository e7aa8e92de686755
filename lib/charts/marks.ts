import type { CircleMark, FillRole, LineMark, LineRole, PathMark, RectMark, TextMark, TextRole, CellRole } from './scene';
import { LINE_HEIGHT } from './scene';

/** Short makers of marks, so that a chart reads as a drawing. */
export const line = (role: LineRole, x1: number, y1: number, x2: number, y2: number, more: Pick<LineMark, 'width' | 'tip'> = {}): LineMark =>
  ({ kind: 'line', role, x1, y1, x2, y2, ...more });

export const path = (role: LineRole | FillRole, d: string, width?: number): PathMark => ({ kind: 'path', role, d, ...(width === undefined ? {} : { width }) });

export const rect = (role: FillRole | CellRole, x: number, y: number, width: number, height: number): RectMark => ({ kind: 'rect', role, x, y, width, height });

export const circle = (role: FillRole, cx: number, cy: number, r: number): CircleMark => ({ kind: 'circle', role, cx, cy, r });

export const text = (x: number, y: number, words: string, role: TextRole = 'ink', more: Partial<Pick<TextMark, 'anchor' | 'strong' | 'halo'>> = {}): TextMark =>
  ({ kind: 'text', role, x, y, text: words, anchor: 'start', ...more });

/** Several lines of text; y is the base line of the first. */
export function textLines(x: number, y: number, lines: readonly string[], role: TextRole = 'ink', more: Partial<Pick<TextMark, 'anchor' | 'strong' | 'halo'>> = {}): readonly TextMark[] {
  return lines.map((words, index) => text(x, y + index * LINE_HEIGHT, words, role, more));
}

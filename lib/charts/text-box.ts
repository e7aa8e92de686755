import { LINE_HEIGHT, type TextMark } from './scene';
import { textWidth } from './text-width';

export interface Box { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

/** The room that a text takes, px. */
export function textBox(mark: TextMark): Box {
  const width = textWidth(mark.text, mark.strong);
  const left = mark.x - { start: 0, middle: width / 2, end: width }[mark.anchor];
  return { left, right: left + width, top: mark.y - LINE_HEIGHT * 0.72, bottom: mark.y + LINE_HEIGHT * 0.22 };
}

/** Whether two boxes cover one another by more than half a pixel. */
export function touch(a: Box, b: Box): boolean {
  return a.left < b.right - 0.5 && b.left < a.right - 0.5 && a.top < b.bottom - 0.5 && b.top < a.bottom - 0.5;
}

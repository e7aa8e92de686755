import type { Mark, Scene } from '@/lib/charts/scene';
import { type Box, textBox, touch } from '@/lib/charts/text-box';

/** The room of a path by its points, control points included; no chart draws arcs. */
function pathBox(d: string): Box {
  let [x, y] = [0, 0];
  const xs: number[] = [];
  const ys: number[] = [];
  for (const [, command = '', rest = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const values = [...rest.matchAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)].map(Number);
    const relative = command === command.toLowerCase();
    const step = command.toLowerCase();
    if (step === 'h' || step === 'v') {
      for (const value of values) {
        if (step === 'h') x = relative ? x + value : value;
        else y = relative ? y + value : value;
        xs.push(x);
        ys.push(y);
      }
    } else {
      const [fromX, fromY] = [x, y];
      for (let index = 0; index + 1 < values.length; index += 2) {
        x = (relative ? fromX : 0) + (values[index] ?? 0);
        y = (relative ? fromY : 0) + (values[index + 1] ?? 0);
        xs.push(x);
        ys.push(y);
      }
    }
  }
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

export function boxOf(mark: Mark): Box {
  switch (mark.kind) {
    case 'line': return { left: Math.min(mark.x1, mark.x2), right: Math.max(mark.x1, mark.x2), top: Math.min(mark.y1, mark.y2), bottom: Math.max(mark.y1, mark.y2) };
    case 'rect': return { left: mark.x, right: mark.x + mark.width, top: mark.y, bottom: mark.y + mark.height };
    case 'circle': return { left: mark.cx - mark.r, right: mark.cx + mark.r, top: mark.cy - mark.r, bottom: mark.cy + mark.r };
    case 'grade': return { left: mark.x, right: mark.x + mark.size, top: mark.y, bottom: mark.y + mark.size };
    case 'text': return textBox(mark);
    case 'path': return pathBox(mark.d);
  }
}

/** What of a scene is not finite or lies outside it, in words; a hair is allowed for widths of strokes and letters. */
export function faultsOf(scene: Scene, hair = 4): readonly string[] {
  return scene.marks.flatMap((mark) => {
    if (mark.kind === 'path' && mark.d === '') return [];
    const box = boxOf(mark);
    const numbers = [box.left, box.right, box.top, box.bottom];
    const what = mark.kind === 'text' ? `text "${mark.text}"` : `${mark.kind} ${'role' in mark ? mark.role : ''}`;
    if (!numbers.every(Number.isFinite)) return [`${what} is not finite`];
    const isOutside = box.left < -hair || box.top < -hair || box.right > scene.width + hair || box.bottom > scene.height + hair;
    return isOutside ? [`${what} lies outside: ${numbers.map((value) => value.toFixed(1)).join(', ')} of ${scene.width} by ${scene.height}`] : [];
  });
}

/** Pairs of texts that cover one another. */
export function overlapsOf(scene: Scene): readonly string[] {
  const texts = scene.marks.filter((mark) => mark.kind === 'text');
  return texts.flatMap((one, index) => texts.slice(index + 1).filter((other) => touch(textBox(one), textBox(other))).map((other) => `"${one.text}" and "${other.text}"`));
}

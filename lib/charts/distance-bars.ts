import { lengthWords, type LengthUnits } from '@/lib/wording/lengths';
import { circle, line, rect, text } from './marks';
import { scaleBar } from './scale-ruler';
import { type Mark, type Scene, WIDE } from './scene';

/** How far something is from the packs, m. What is not known is not handed over: it is never drawn. */
export interface Distance { readonly words: string; readonly length: number }

const ROW = 46;
const LEFT = 24;
const RIGHT = 30;

/** Distances from the packs, one under the other and to one scale. @throws where there is none, or one below 0 */
export function distanceScene(distances: readonly Distance[], units: LengthUnits): Scene {
  if (distances.length === 0 || distances.some(({ length }) => !(length >= 0))) throw new Error('there are distances, and none is below 0');
  const scale = (WIDE - LEFT - RIGHT) / Math.max(1, ...distances.map(({ length }) => length));
  const height = distances.length * ROW;
  return {
    width: WIDE, height: height + 34,
    title: `From the packs, to one scale: ${distances.map(({ words, length }) => `${words} ${lengthWords(length, units)}`).join('; ')}.`,
    marks: [...distances.flatMap((distance, index) => bar(distance, index * ROW, scale, units)), ...scaleBar(LEFT, height + 14, scale, units)],
  };
}

/** From the pack, a dark square, to what is near it, an open ring. */
function bar({ words, length }: Distance, y: number, scale: number, units: LengthUnits): readonly Mark[] {
  const [end, base] = [LEFT + length * scale, y + 30];
  return [
    text(0, y + 15, `${words}, ${lengthWords(length, units)}`),
    line('axis', LEFT, base, end, base),
    rect('ink', LEFT - 18, base - 6, 18, 12),
    circle('ring', end, base, 5),
  ];
}

import { ClipPath, Defs, G, Path, Rect } from '@react-pdf/renderer';
import type { PathMark, RectMark } from '@/lib/charts/scene';
import { SAND_GRAINS, SAND_TILE } from '@/lib/charts/sand-grains';
import { COLOUR } from './paper-colours';

interface Box { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }

/** Sand in a rectangle, with an edge where the scene asks for one. */
export function SandRect({ mark }: { readonly mark: RectMark }) {
  const { x, y, width, height } = mark;
  const edge = mark.role === 'grain-edge' ? { stroke: COLOUR.grain, strokeWidth: 1.5 } : {};
  return (
    <>
      <Rect x={x} y={y} width={width} height={height} fill={COLOUR.grain} fillOpacity={0.13} />
      <Grains within={{ left: x, top: y, right: x + width, bottom: y + height }} />
      <Rect x={x} y={y} width={width} height={height} fill="none" {...edge} />
    </>
  );
}

/** Sand in an outline, cut off at its edge. @param id a name of its own in the picture */
export function SandPath({ mark, id, sheet }: { readonly mark: PathMark; readonly id: string; readonly sheet: Box }) {
  return (
    <>
      <Path d={mark.d} fill={COLOUR.grain} fillOpacity={0.13} />
      <Defs><ClipPath id={id}><Path d={mark.d} /></ClipPath></Defs>
      <G clipPath={`url(#${id})`}><Grains within={pointsBox(mark.d) ?? sheet} /></G>
    </>
  );
}

/** Grains as points of a round pen, in three sizes: a hundredth of the bytes that circles take. */
function Grains({ within }: { readonly within: Box }) {
  return PEN_SIZES.map(({ least, most, pen }) => {
    const d = grainPoints(within, (r) => r >= least && r < most);
    return d === '' ? null : <Path key={pen} d={d} fill="none" stroke={COLOUR.grain} strokeWidth={pen} strokeLinecap="round" />;
  });
}

const PEN_SIZES = [
  { least: 0, most: 0.8, pen: 1.4 },
  { least: 0.8, most: 1, pen: 1.8 },
  { least: 1, most: 9, pen: 2.1 },
] as const;

function grainPoints(within: Box, ofSize: (r: number) => boolean): string {
  const grains = SAND_GRAINS.filter(([, , r]) => ofSize(r));
  const points: string[] = [];
  for (let top = Math.floor(within.top / SAND_TILE) * SAND_TILE; top < within.bottom; top += SAND_TILE) {
    for (let left = Math.floor(within.left / SAND_TILE) * SAND_TILE; left < within.right; left += SAND_TILE) {
      for (const [x, y, r] of grains) if (isWithin(left + x, top + y, r, within)) points.push(`M${short(left + x)} ${short(top + y)}h.01`);
    }
  }
  return points.join('');
}

function isWithin(x: number, y: number, r: number, { left, top, right, bottom }: Box): boolean {
  return x - r >= left && x + r <= right && y - r >= top && y + r <= bottom;
}

const short = (value: number): string => String(Math.round(value * 10) / 10);

/** The box around an outline of straight and curved pieces in absolute places; undefined for any other. */
function pointsBox(d: string): Box | undefined {
  if (!/^[MLCZ\d.,\s-]+$/.test(d)) return undefined;
  const values = Array.from(d.matchAll(/-?\d*\.?\d+/g), ([value]) => Number(value));
  const xs = values.filter((_, index) => index % 2 === 0);
  const ys = values.filter((_, index) => index % 2 === 1);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

import { describe, expect, it } from 'vitest';
import { distanceScene } from '@/lib/charts/distance-bars';
import { type PlanRoom, roomPlanScene } from '@/lib/charts/room-plan';
import type { RectMark, Scene } from '@/lib/charts/scene';
import { expectWithin } from '@/tests/support/expect-within';
import { faultsOf, overlapsOf } from '@/tests/support/scene-facts';

const room = (letter: string, length: number, width: number, use = 'charging'): PlanRoom => ({ letter, use, length, width });
const rects = (scene: Scene, role: string): readonly RectMark[] => scene.marks.filter((mark): mark is RectMark => mark.kind === 'rect' && mark.role === role);
const SETS: readonly (readonly PlanRoom[])[] = [
  [room('A', 8.2, 6)], [room('A', 8.2, 6), room('B', 3, 2, 'store'), room('C', 30, 18, 'arena')], [room('A', 200, 200), room('B', 0.5, 0.5)], [room('A', 0.5, 200)],
  Array.from({ length: 12 }, (_, index) => room(String.fromCharCode(65 + index), 4 + index, 3 + index, index % 2 === 0 ? 'store' : 'arena')),
];

describe.each([['metric'], ['us']] as const)('a plan of rooms in %s units', (units) => {
  it('stays inside, writes no word over another, and says every size', () => {
    for (const rooms of SETS) {
      const scene = roomPlanScene(rooms, units);
      expect(faultsOf(scene)).toEqual([]);
      expect(overlapsOf(scene)).toEqual([]);
      for (const { letter } of rooms) expect(scene.title).toContain(`${letter}, `);
    }
  });

  it('draws all rooms to one scale, which its bar says', () => {
    const scene = roomPlanScene(SETS[1] ?? [], units);
    const inside = rects(scene, 'paper');
    const scale = (inside[0]?.width ?? 0) / 8.2;
    expect(inside).toHaveLength(3);
    for (const [index, { length, width }] of (SETS[1] ?? []).entries()) {
      expectWithin(inside[index]?.width ?? 0, length * scale, { abs: 0.02 });
      expectWithin(inside[index]?.height ?? 0, width * scale, { abs: 0.02 });
    }
    const bar = scene.marks.findLast((mark) => mark.kind === 'line' && mark.role === 'axis' && mark.y1 === mark.y2);
    const said = scene.marks.flatMap((mark) => (mark.kind === 'text' && / (m|ft)$/.test(mark.text) && mark.anchor === 'start' ? [mark.text] : [])).at(-1) ?? '';
    const metres = Number.parseFloat(said) * (units === 'us' ? 0.3048 : 1);
    expectWithin(bar?.kind === 'line' ? bar.x2 - bar.x1 : 0, metres * scale, { abs: 0.05 });
  });
});

describe('what is not known', () => {
  it('is never drawn: a room without a size, or no room at all, is refused', () => {
    expect(() => roomPlanScene([], 'metric')).toThrow('a plan has rooms');
    expect(() => roomPlanScene([room('A', 0, 3)], 'metric')).toThrow('a plan has rooms');
    expect(() => roomPlanScene([room('A', Number.NaN, 3)], 'metric')).toThrow('a plan has rooms');
    expect(() => distanceScene([], 'metric')).toThrow('distances');
    expect(() => distanceScene([{ words: 'person', length: -1 }], 'metric')).toThrow('distances');
  });
});

describe('distances from the packs', () => {
  it('are drawn to one scale, none too, and stay inside', () => {
    const scene = distanceScene([{ words: 'nearest person', length: 4 }, { words: 'nearest thing that burns', length: 1 }, { words: 'free above', length: 0 }], 'metric');
    expect(faultsOf(scene)).toEqual([]);
    expect(overlapsOf(scene)).toEqual([]);
    const ends = scene.marks.flatMap((mark) => (mark.kind === 'circle' ? [mark.cx] : []));
    const start = ends[2] ?? 0;
    expectWithin((ends[0] ?? 0) - start, 4 * ((ends[1] ?? 0) - start), { abs: 0.05 });
  });
});

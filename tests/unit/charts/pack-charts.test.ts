import { describe, expect, it } from 'vitest';
import { cellFinding, cellScene } from '@/lib/charts/cell-rulers';
import { type Mark, NARROW, type Scene, WIDE } from '@/lib/charts/scene';
import { spreadScene } from '@/lib/charts/spread-over-time';
import { DAY_MS } from '@/lib/units/time';
import { expectWithin } from '@/tests/support/expect-within';

const LIMITS = { low: 3.3, full: 4.2, storage: { low: 3.7, high: 3.88 } };
const SPREADS = [{ volts: 0.1, words: '100 mV: watch' }, { volts: 0.3, words: '300 mV: isolate' }];
const dots = (...spreads: number[]) => spreads.map((spreadV, at) => ({ at: new Date(Date.UTC(2026, 0, 1) + at * 30 * DAY_MS), spreadV }));
const circles = ({ marks }: Scene) => marks.filter((mark) => mark.kind === 'circle');
const inside = (scene: Scene, mark: Mark): boolean => !('x' in mark) || (mark.x >= 0 && mark.x <= scene.width);

describe('cells on their rulers', () => {
  it('says what is seen, silent cells included', () => {
    expect(cellFinding([3.72, 3.73, 3.41, 3.72])).toBe('4 cells, 3.41 to 3.73 V, 320 mV apart.');
    expect(cellFinding([3.8, null])).toBe('2 cells, 3.80 to 3.80 V, 0 mV apart. One cell reads nothing.');
    expect(cellFinding([null, null])).toBe('2 cells. 2 cells read nothing.');
  });

  it.each([WIDE, NARROW])('draws a pointer for each cell that reads, a disc in ember where it presses, at %s px', (width) => {
    const scene = cellScene([3.72, null, 3.41], LIMITS, [2, 3], width);
    expect(scene.marks.filter((mark) => mark.kind === 'path').map(({ role }) => role)).toEqual(['ink']);
    expect(circles(scene).map(({ role }) => role)).toEqual(['ember']);
    expect(scene.marks.every((mark) => inside(scene, mark))).toBe(true);
    expect(scene.marks).toContainEqual(expect.objectContaining({ kind: 'text', text: 'nothing', role: 'ember' }));
  });

  it('draws no limits where there are none, and widens for what lies outside', () => {
    const scene = cellScene([2.1, 4.6], { low: null, full: null, storage: null }, [], WIDE);
    expect(scene.marks.filter((mark) => mark.kind === 'line' && mark.role === 'limit')).toEqual([]);
    expect(scene.marks.every((mark) => inside(scene, mark))).toBe(true);
  });
});

describe('the spread over the checks', () => {
  it('stands higher the more the cells differ, and the last one presses at the highest limit', () => {
    const scene = spreadScene(dots(0.01, 0.05, 0.3), SPREADS, WIDE);
    expect(circles(scene).map(({ role }) => role)).toEqual(['ink', 'ink', 'ember']);
    const [first, second, third] = circles(scene).map(({ cy }) => cy) as [number, number, number];
    expect(first > second && second > third).toBe(true);
    const limit = scene.marks.find((mark) => mark.kind === 'line' && mark.role === 'limit' && mark.y1 === third);
    expect(limit).toBeDefined();
    expect(spreadScene(dots(0.3, 0.29), SPREADS, WIDE).marks.filter((mark) => mark.kind === 'circle').at(-1)?.role).toBe('ink');
  });

  it.each([WIDE, NARROW])('keeps all that it says inside, also with a single check, at %s px', (width) => {
    for (const scene of [spreadScene(dots(0.02), SPREADS, width), spreadScene(dots(0.02, 0.9, 0.4), [], width)]) {
      expect(scene.marks.every((mark) => inside(scene, mark))).toBe(true);
      for (const mark of circles(scene)) expectWithin(mark.cy, scene.height / 2, { abs: scene.height / 2 });
    }
  });

  it('says first and last in words', () => {
    expect(spreadScene(dots(0.01, 0.31), SPREADS, WIDE).title).toBe('2 checks: 10 mV at the first, 310 mV at the last check.');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestWithin, effortScene } from '@/lib/charts/effort-curve';
import { frequencyRulerScene, onRuler } from '@/lib/charts/frequency-ruler';
import { heatScene } from '@/lib/charts/heat-distances';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { textWidth, wrap } from '@/lib/charts/text-width';
import { tornadoScene } from '@/lib/charts/tornado';
import type { BestSet, DoubtResult } from '@/lib/core/result';
import { faultsOf, overlapsOf } from '@/tests/support/scene-facts';
import { expectWithin } from '@/tests/support/expect-within';

const WIDTHS = [WIDE, NARROW] as const;
const length = fc.double({ min: 0.01, max: 20, noNaN: true });
const maybe = fc.option(length, { nil: null });
const set = (budget: number, cut: number): BestSet => ({ budget, controls: [], effort: budget, harmBefore: 10, harmAfter: 10 * (1 - cut), harmReduction: 10 * cut, cut, cutInterval: { p05: cut * 0.5, p95: Math.min(1, cut * 1.3) }, complete: true });

describe('the frequency ruler', () => {
  it('gives every decade the same length', () => {
    expectWithin(onRuler(0.1) - onRuler(0.01), onRuler(1) - onRuler(0.1), { abs: 1e-9 });
  });

  it('stays finite and inside for any frequency, also none', () => {
    const events = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(fc.property(events, events, events, (mean, p05, p95) => {
      expect(faultsOf(frequencyRulerScene(mean, { p05: Math.min(p05, p95), p95: Math.max(p05, p95) }), 5)).toEqual([]);
    }));
  });
});

describe('heat distances', () => {
  it('stay inside, finite and legible around any fire', () => {
    const level = fc.record({ Q_kW: length, flameHeight: fc.double({ min: 0, max: 4, noNaN: true }), ignitionDistance: length, painDistance: length });
    fc.assert(fc.property(level, maybe, maybe, maybe, (mid, person, combustible, clearHeight) => {
      const scaled = (factor: number) => ({ Q_kW: mid.Q_kW * factor, flameHeight: mid.flameHeight * factor, ignitionDistance: mid.ignitionDistance * factor, painDistance: mid.painDistance * factor });
      const heat = { low: scaled(0.5), mid, high: scaled(1.5) };
      for (const width of WIDTHS) {
        const scene = heatScene(heat, { person, combustible, clearHeight }, width);
        expect([...faultsOf(scene), ...overlapsOf(scene)]).toEqual([]);
      }
    }));
  });

  it('press only for what the fiercest fire reaches', () => {
    const heat = { low: reach(0.1), mid: reach(0.2), high: reach(0.4) };
    const pressing = (combustible: number) => heatScene(heat, { person: 3, combustible, clearHeight: null }, WIDE).marks.some((mark) => mark.kind === 'text' && mark.role === 'ember');
    expect([pressing(0.39), pressing(0.41)]).toEqual([true, false]);
  });
});

function reach(distance: number) { return { Q_kW: 1, flameHeight: 0.3, ignitionDistance: distance, painDistance: 2 * distance }; }

describe('effort', () => {
  const sets = [set(0, 0), set(2, 0.2), set(5, 0.5)];

  it('takes the best set that the budget allows', () => {
    expect([bestWithin(sets, 4)?.cut, bestWithin(sets, 5)?.cut, bestWithin([set(3, 0.1)], 1)]).toEqual([0.2, 0.5, null]);
  });

  it('stays inside, finite and legible for any steps', () => {
    const steps = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.double({ min: 0, max: 1, noNaN: true })), { minLength: 1, maxLength: 20 });
    fc.assert(fc.property(steps, fc.integer({ min: 0, max: 40 }), (pairs, budget) => {
      for (const width of WIDTHS) {
        const scene = effortScene(pairs.map(([at, cut]) => set(at, cut)), budget, width);
        expect([...faultsOf(scene, 7), ...overlapsOf(scene)]).toEqual([]);
      }
    }));
  });
});

describe('the tornado', () => {
  const doubt = (harmLow: number, harmHigh: number): DoubtResult => ({ kind: 'rate', id: `${harmLow}`, title: 'A long title of something nobody knows well enough to say', between: 'seldomer or oftener', harmLow, harmHigh, canBeChecked: true });

  it('stays inside, finite and legible for any harm', () => {
    const harm = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(fc.property(fc.array(fc.tuple(harm, harm), { maxLength: 12 }), harm, (pairs, total) => {
      for (const width of WIDTHS) {
        const scene = tornadoScene(pairs.map(([a, b]) => doubt(Math.min(a, b), Math.max(a, b))), total, width);
        expect([...faultsOf(scene), ...overlapsOf(scene)]).toEqual([]);
      }
    }));
  });

  it('draws nothing where there is no harm', () => {
    expect(tornadoScene([doubt(0, 1)], 0, WIDE).marks.some((mark) => mark.kind === 'rect')).toBe(false);
  });
});

describe('wrapping', () => {
  it('keeps every word and every line within its width', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 12 });
    fc.assert(fc.property(words, (list) => {
      const lines = wrap(list.join(' '), 90, 99);
      expect(lines.join(' ')).toBe(list.join(' '));
      for (const line of lines.filter((one) => one.includes(' '))) expect(textWidth(line)).toBeLessThanOrEqual(90);
    }));
  });

  it('says with dots that something is left out', () => {
    expect(wrap('one two three four five six', 60, 2).at(-1)).toMatch(/ \.\.\.$/);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NARROW, WIDE } from '@/lib/charts/scene';
import { smokeScene } from '@/lib/charts/smoke-curve';
import { smokePoints } from '@/lib/charts/smoke-points';
import type { SmokeCase } from '@/lib/core/result';
import { concentrationPpm, roomGases } from '@/lib/core/smoke/room-gas';
import { yieldsOf } from '@/lib/core/smoke/screening';
import type { Seconds } from '@/lib/units/quantity';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';
import { faultsOf, overlapsOf } from '@/tests/support/scene-facts';
import { results, thresholds } from './venues';

const [first] = results;
const lot = first?.smoke.lot as SmokeCase;

describe('the smoke curve', () => {
  it('is that of the well-mixed room, at every moment it is drawn', () => {
    const packEnergyWh = first?.battery.packWh ?? 0;
    const { HF } = roomGases(model, { packs: lot.packs, packEnergyWh, volumeM3: lot.volume, airChanges: lot.airChanges }, yieldsOf(model, 'mid'));
    for (const point of smokePoints(lot, 600)) {
      if (point.seconds > 0) expectWithin(point.mid, concentrationPpm(model, HF, point.seconds as Seconds), { rel: 1e-9 });
    }
  });

  it('has its peak where the release ends, as the result states it', () => {
    const peak = smokePoints(lot, 600).find((point) => point.seconds === lot.releaseSeconds);
    expectWithin(peak?.high ?? 0, lot.levels.high.HF.peakPpm, { rel: 1e-12 });
  });

  it('takes the published thresholds out of the content', () => {
    // REFERENCES B.1, B.2 (READ-P): IDLH 30 ppm, AEGL-3 for half an hour 62 ppm, AEGL-1 1 ppm
    expect(thresholds).toEqual({ dangerous: 30, lifeAtRisk: 62, irritation: 1 });
  });

  it('presses at the first smoke and nowhere else', () => {
    for (const width of [WIDE, NARROW]) {
      const scene = smokeScene(lot, thresholds, width);
      const ember = scene.marks.filter((mark) => 'role' in mark && mark.role === 'ember');
      expect(ember.map((mark) => mark.kind)).toEqual(['line', 'circle', 'text']);
      expect(ember.find((mark) => mark.kind === 'text')).toMatchObject({ text: 'leave here, at the first smoke' });
    }
  });

  it('never names a time one could stay', () => {
    const words = smokeScene(lot, thresholds, WIDE).marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
    expect(words).not.toMatch(/get out now|until|safe|seconds|\bs\b/);
  });

  it('stays inside and finite in any room', () => {
    const room = fc.record({ volume: fc.double({ min: 5, max: 20000, noNaN: true }), airChanges: fc.double({ min: 0, max: 60, noNaN: true }), releaseSeconds: fc.integer({ min: 10, max: 3600 }), evacuationSeconds: fc.integer({ min: 0, max: 3600 }), peak: fc.double({ min: 0, max: 5000, noNaN: true }) });
    fc.assert(fc.property(room, ({ peak, ...rest }) => {
      const level = (factor: number) => ({ ...lot.levels.mid, HF: { ...lot.levels.mid.HF, peakPpm: peak * factor } });
      const smoke: SmokeCase = { ...lot, ...rest, levels: { low: level(0.2), mid: level(1), high: level(2) } };
      expect([WIDE, NARROW].flatMap((width) => { const scene = smokeScene(smoke, thresholds, width); return [...faultsOf(scene), ...overlapsOf(scene)]; })).toEqual([]);
    }), { numRuns: 200 });
  });
});

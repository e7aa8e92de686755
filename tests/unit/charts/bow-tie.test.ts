import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barLength, threadWidth } from '@/lib/charts/bow-tie-bars';
import { bowTie, decadesTaken } from '@/lib/charts/bow-tie-model';
import { bowTieScene } from '@/lib/charts/bow-tie';
import type { RiskResult } from '@/lib/core/result';
import { expectWithin } from '@/tests/support/expect-within';
import { inPlaceFailure, results } from './venues';

const share = fc.double({ min: 1e-9, max: 1, noNaN: true });
const ties = results.flatMap((result) => result.risks.map((risk) => bowTie({ risk, first: result.bestSet.controls, inPlaceFailure })));

describe('bars', () => {
  it('are a decade long when one in ten gets past', () => {
    expectWithin(decadesTaken(0.1), 1, { abs: 1e-12 });
    expect(decadesTaken(1)).toBe(0);
    expect(Number.isFinite(decadesTaken(0))).toBe(true);
  });

  it('never get longer, nor threads thinner, when more gets past', () => {
    fc.assert(fc.property(share, share, (a, b) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expect(barLength(decadesTaken(less))).toBeGreaterThanOrEqual(barLength(decadesTaken(more)));
      expect(threadWidth(less, 9)).toBeLessThanOrEqual(threadWidth(more, 9));
    }));
  });
});

describe('a bow tie', () => {
  it('names every bar by a sign of its own, the same on every thread', () => {
    for (const tie of ties) {
      const signs = [...tie.prevent, ...tie.branches.flatMap((branch) => branch.bars)].map((bar) => `${bar.sign} ${bar.control}`);
      expect(new Set(signs).size).toBe(tie.key.length);
      expect(new Set(tie.key.map((bar) => bar.sign)).size).toBe(tie.key.length);
    }
  });

  it('lets everything past a control that is absent, however much it would take away', () => {
    const absent = ties.flatMap((tie) => [...tie.prevent, ...tie.branches.flatMap((branch) => branch.bars)]).filter((bar) => bar.state === 'absent');
    expect(absent.length).toBeGreaterThan(0);
    for (const bar of absent) expect(bar.passing).toBe(1);
    expect(absent.some((bar) => bar.decades > 0)).toBe(true);
  });

  it('passes what the engine says, thread by thread', () => {
    for (const tie of ties.filter((one) => one.risk.exposure > 0)) {
      const passing = tie.prevent.reduce((product, bar) => product * bar.passing, 1);
      const counted = tie.risk.controls.filter((use) => use.part === 'prevent' && use.counts).reduce((product, use) => product * use.effectiveFailure, 1);
      expectWithin(passing, counted, { rel: 1e-12 });
    }
  });

  it('draws a bar that is not there hatched and never filled with ink', () => {
    const [risk] = ties;
    const use = (risk?.risk as RiskResult).controls.find((one) => one.part === 'prevent');
    if (risk === undefined || use === undefined) throw new Error('the first venue has no preventing control');
    const alone = { ...risk.risk, branches: [], controls: [{ ...use, state: 'absent' as const, effectiveFailure: 1 }] };
    const scene = bowTieScene(bowTie({ risk: alone, first: [use.control], inPlaceFailure }));
    const roles = scene.marks.flatMap((mark) => ('role' in mark && mark.kind !== 'text' ? [mark.role] : []));
    expect(roles).toContain('hatch-todo');
    // the only ink is the box of the event
    expect(scene.marks.filter((mark) => mark.kind === 'rect' && mark.role === 'ink')).toHaveLength(1);
  });
});

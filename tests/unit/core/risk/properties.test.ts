import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { ControlState } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { stateOf, withStates } from '@/lib/core/answers/venue';
import { candidatesOf, inPlace } from '@/lib/core/risk/candidates';
import { type ClosedEvaluation, evaluateClosed } from '@/lib/core/risk/closed-form';
import { effectiveFailure } from '@/lib/core/risk/counted-uses';
import { GRADES } from '@/lib/core/risk/grade-matrix';
import { meanFailure } from '@/lib/core/risk/mean-failure';
import { inherentVenue } from '@/lib/core/risk/three-states';
import { score } from '@/lib/core/score';
import { arbitraryDocument } from '../../../support/arbitrary-document';
import { noMoreThan, ready } from '../../../support/evaluate';

const RUNS = { numRuns: 40 };
const gradeNumber = (grade: string): number => GRADES.findIndex((one) => one === grade);

function expectNoWorse(after: ClosedEvaluation, before: ClosedEvaluation): void {
  after.risks.forEach((risk, index) => {
    const was = before.risks[index];
    if (was === undefined) throw new Error('risks differ in number');
    expect(noMoreThan(risk.topFrequency, was.topFrequency), `frequency of risk ${index} rose`).toBe(true);
    expect(noMoreThan(risk.harm, was.harm), `harm of risk ${index} rose`).toBe(true);
    expect(gradeNumber(risk.grade), `grade of risk ${index} rose`).toBeLessThanOrEqual(gradeNumber(was.grade));
  });
}

describe('controls', () => {
  it('never raise any risk when they are improved', () => {
    const better: Readonly<Record<ControlState, readonly ControlState[]>> = { absent: ['not sure', 'partly', 'in place'], 'not sure': ['partly', 'in place'], partly: ['in place'], 'in place': [], 'not applicable': [] };
    fc.assert(fc.property(arbitraryDocument, fc.nat(), (document, pick) => {
      const { venue, setup, today } = ready(document);
      const control = edition1.controls[pick % edition1.controls.length];
      if (control === undefined) throw new Error('no control');
      for (const state of better[stateOf(venue, control.id)]) expectNoWorse(evaluateClosed(setup, withStates(venue, new Map([[control.id, state]]))), today);
    }), { numRuns: 120 });
  });

  it('are never better when nobody is sure than when they are partly there', () => {
    for (const control of edition1.controls) {
      expect(meanFailure(control, 'not sure')).toBeGreaterThanOrEqual(meanFailure(control, 'partly'));
      expect(meanFailure(control, 'partly')).toBeGreaterThan(meanFailure(control, 'in place'));
    }
  });

  it('add nothing when another of their group is better on every path they share', () => {
    fc.assert(fc.property(arbitraryDocument, (document) => {
      const { venue, setup, today } = ready(document);
      for (const candidate of candidatesOf(venue).slice(0, 12)) {
        const idle = setup.compiled.scenarios.every(({ branches }) => branches.every(({ path }) => {
          const own = path.find((use) => use.control === candidate.index);
          if (own === undefined) return true;
          if (own.group < 0) return false;
          const { controls, failures } = setup.compiled;
          const mine = effectiveFailure(own.reach, failures.of(own.control, 'in place'));
          return path.some((use) => use !== own && use.group === own.group && effectiveFailure(use.reach, failures.of(use.control, stateOf(venue, controls[use.control]?.id ?? ''))) < mine);
        }));
        if (!idle || ['charge-box', 'charge-bag', 'store-lots', 'damaged-apart', 'travel-box'].includes(candidate.control)) continue;
        expect(evaluateClosed(setup, inPlace(venue, [candidate.control])).totalHarm).toBe(today.totalHarm);
      }
    }), RUNS);
  });
});

describe('exposure', () => {
  it('doubles every frequency of a scenario when it doubles, and touches no other', () => {
    fc.assert(fc.property(arbitraryDocument, fc.constantFrom(...edition1.exposures.map((one) => one.id)), (document, base) => {
      const { venue, today } = ready(document);
      const figure = venue.exposures.get(base) ?? 0;
      const others = Object.fromEntries([...venue.exposures].filter(([id]) => id !== base));
      const twice = ready({ ...document, exposures: { ...others, [base]: figure * 2 } }).today;
      edition1.scenarios.forEach((scenario, index) => {
        const factor = scenario.exposureBase === base ? 2 : 1;
        const wanted = (today.risks[index]?.topFrequency ?? 0) * factor;
        // below this, numbers lose digits and doubling is no longer exact
        if (wanted > 1e-290) expect(twice.risks[index]?.topFrequency).toBe(wanted);
      });
    }), RUNS);
  });

  it('never lowers a risk when there is more of it', () => {
    fc.assert(fc.property(arbitraryDocument, fc.double({ min: 1, max: 50, noNaN: true }), (document, factor) => {
      const { venue, today } = ready(document);
      const more = Object.fromEntries([...venue.exposures].map(([id, figure]) => [id, figure * factor]));
      expectNoWorse(today, ready({ ...document, exposures: more }).today);
    }), RUNS);
  });
});

describe('today between nothing and the plan', () => {
  it('has inherent at or above residual, and residual at or above planned', () => {
    fc.assert(fc.property(arbitraryDocument, fc.subarray(edition1.controls.map((control) => control.id)), (document, planned) => {
      const { venue, setup, today } = ready(document);
      expectNoWorse(today, evaluateClosed(setup, inherentVenue(venue)));
      expectNoWorse(evaluateClosed(setup, inPlace(venue, planned)), today);
    }), RUNS);
  });

  it('loses no harm twice: a larger set of actions never leaves more', () => {
    fc.assert(fc.property(arbitraryDocument, fc.array(fc.nat(), { minLength: 1, maxLength: 8 }), (document, picks) => {
      const { venue, setup, today } = ready(document);
      const open = candidatesOf(venue);
      const chosen: string[] = [];
      let before = today.totalHarm;
      for (const pick of picks) {
        const candidate = open[pick % Math.max(1, open.length)];
        if (candidate === undefined) return;
        chosen.push(candidate.control);
        const after = evaluateClosed(setup, inPlace(venue, chosen)).totalHarm;
        expect(noMoreThan(after, before)).toBe(true);
        before = after;
      }
    }), RUNS);
  });
});

describe('the whole score', () => {
  it('does not depend on the order of the answers', () => {
    fc.assert(fc.property(arbitraryDocument, (document) => {
      const turned = { ...document, answers: Object.fromEntries(Object.entries(document.answers).reverse()) };
      const one = resolveVenue(edition1, document);
      const other = resolveVenue(edition1, turned);
      expect([...other.states]).toEqual([...one.states]);
      expect([...other.inputs]).toEqual([...one.inputs]);
      expect([...other.exposures]).toEqual([...one.exposures]);
    }), RUNS);
  });

  it('is the same to the last byte each time, finite everywhere, with ordered quantiles and shares that sum to one', () => {
    fc.assert(fc.property(arbitraryDocument, fc.nat({ max: 4_294_967_295 }), (document, seed) => {
      const once = score(edition1, document, { seed, draws: 200, inputHash: 'x' });
      const again = score(edition1, document, { seed, draws: 200, inputHash: 'x' });
      expect(JSON.stringify(again)).toBe(JSON.stringify(once));
      expectFinite(once, '$');
      for (const risk of once.risks) {
        for (const one of [risk.frequency, risk.harm]) {
          expect(one.p05).toBeLessThanOrEqual(one.p50);
          expect(one.p50).toBeLessThanOrEqual(one.p95);
          expect(one.p05).toBeGreaterThanOrEqual(0);
        }
        const shares = Object.values(risk.gradeShares).reduce((sum, share) => sum + share, 0);
        expect(Math.abs(shares - 1)).toBeLessThan(1e-12);
      }
    }), { numRuns: 12 });
  }, 120_000);

  it('has no grade and no rank above others for what is not done at all', () => {
    const result = score(edition1, { id: 'x', title: 'x', answers: { 'travel-trips': { roadTrips: 0, warmTrips: 0, packsPerTrip: 0, airTrips: 0 } } }, { seed: 1, draws: 200, inputHash: 'x' });
    const none = result.risks.filter((risk) => risk.exposure === 0);
    expect(none.map((risk) => risk.id)).toEqual(['air-travel-breach', 'hot-vehicle', 'transit-fire']);
    expect(none.every((risk) => risk.grade === 'not applicable' && risk.onceInSeasons === null && risk.gradeShares['not applicable'] === 1)).toBe(true);
    expect(none.map((risk) => risk.rank)).toEqual([16, 17, 18]);
  });
});

function expectFinite(value: unknown, path: string): void {
  if (typeof value === 'number') expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
  else if (typeof value === 'object' && value !== null) for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
}

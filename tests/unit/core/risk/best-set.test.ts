import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { InputMove } from '@/lib/content/model';
import { bestSet } from '@/lib/core/risk/best-set';
import { candidatesOf } from '@/lib/core/risk/candidates';
import { arbitraryDocument } from '../../../support/arbitrary-document';
import { bestByTryingAll, spreadOver } from '../../../support/best-by-trying-all';
import { ready } from '../../../support/evaluate';
import { REFERENCE_VENUES, referenceDocument } from '../../../support/reference-venues';

describe('the best set of actions', () => {
  it.each(REFERENCE_VENUES)('is the one that trying every set of ten finds, in %s', (venue) => {
    const { setup } = ready(referenceDocument(venue));
    for (const from of [0, 5]) for (const budget of [3, 9, 20]) {
      const candidates = spreadOver(candidatesOf(setup.venue), 10, from);
      const found = bestSet(setup, budget, candidates);
      const brute = bestByTryingAll(setup, budget, candidates);
      expect({ controls: found.controls, harm: found.harmAfter }).toEqual({ controls: brute.controls, harm: brute.harm });
    }
  }, 60_000);

  it('is the one that trying every set of fourteen finds', () => {
    const { setup } = ready(referenceDocument('bad-store'));
    const candidates = spreadOver(candidatesOf(setup.venue), 14, 3);
    const brute = bestByTryingAll(setup, 14, candidates);
    expect(bestSet(setup, 14, candidates).controls).toEqual(brute.controls);
  }, 120_000);

  it('is the one that trying every set finds, in any room', () => {
    fc.assert(fc.property(arbitraryDocument, fc.nat({ max: 60 }), fc.integer({ min: 0, max: 30 }), (document, from, budget) => {
      const { setup } = ready(document);
      const candidates = spreadOver(candidatesOf(setup.venue), 7, from);
      expect(bestSet(setup, budget, candidates).controls).toEqual(bestByTryingAll(setup, budget, candidates).controls);
    }), { numRuns: 25 });
  }, 120_000);

  it('is the one that trying every set finds when actions move inputs, so that two together do more than the product of both', () => {
    // as an outdoor store, clear space and a charge that is never left overnight would
    const moves: Readonly<Record<string, readonly InputMove[]>> = {
      'store-away': [{ input: 'storageOutdoor', to: 1, only: 'always' }],
      'clear-space-charging': [{ input: 'combustibleDistance', to: 1, only: 'if lower' }, { input: 'clearHeight', to: 1.5, only: 'if lower' }],
      'response-drill': [{ input: 'chargingEvac', to: 60, only: 'if higher' }, { input: 'storageEvac', to: 60, only: 'if higher' }],
    };
    const content = { ...edition1, controls: edition1.controls.map((control) => ({ ...control, effort: { hours: Math.min(4, control.effort.hours), moneyBand: 0 }, moves: moves[control.id] })) };
    for (const venue of ['bad-store', 'ordinary-classroom'] as const) {
      const { setup } = ready(referenceDocument(venue), content);
      const all = candidatesOf(setup.venue);
      const wanted = ['store-away', 'store-lots', 'clear-space-charging', 'charge-box', 'charge-bag', 'response-drill', 'damaged-apart', 'storage-charge', 'balance-charger', 'alarm-means'];
      const candidates = all.filter((candidate) => wanted.includes(candidate.control));
      for (const budget of [2, 4, 6, 9, 14]) {
        const found = bestSet(setup, budget, candidates);
        const brute = bestByTryingAll(setup, budget, candidates);
        expect({ venue, budget, controls: found.controls, harm: found.harmAfter }).toEqual({ venue, budget, controls: brute.controls, harm: brute.harm });
      }
    }
  }, 120_000);

  it('is the one that trying every set finds when an action turns one exposure into another, as a charge that is watched instead of left overnight', () => {
    const wanted = ['attended-charging', 'no-parallel', 'charge-box', 'charge-bag', 'store-away', 'store-lots', 'store-cabinet', 'damaged-apart', 'balance-charger', 'remote-switch', 'smoke-alarm'];
    for (const overnightShare of [0, 0.4, 1]) for (const venue of ['bad-store', 'everything'] as const) {
      const document = { ...referenceDocument(venue), inputs: { overnightCharging: 1, overnightShare, packsPerOutput: 6 }, states: { 'attended-charging': 'absent', 'no-parallel': 'absent' } } as const;
      const { setup } = ready(document, edition2);
      const candidates = candidatesOf(setup.venue).filter((candidate) => wanted.includes(candidate.control));
      expect(candidates.map((one) => one.control)).toContain('attended-charging');
      for (const budget of [4, 9, 16, 30, 60]) {
        const found = bestSet(setup, budget, candidates);
        const brute = bestByTryingAll(setup, budget, candidates);
        expect({ venue, overnightShare, budget, controls: found.controls, harm: found.harmAfter }).toEqual({ venue, overnightShare, budget, controls: brute.controls, harm: brute.harm });
      }
    }
  }, 120_000);

  it('gives up after so many branches, and says so, where one risk swamps all others', () => {
    const document = { ...referenceDocument('everything'), exposures: { airTrips: 1e9 } };
    const { setup } = ready(document, edition2);
    const found = bestSet(setup, 120);
    expect(found.complete).toBe(false);
    expect(found.effort).toBeLessThanOrEqual(120);
    expect(found.harmAfter).toBeLessThan(found.harmBefore);
    expect(bestSet(setup, 120).controls).toEqual(found.controls);
    expect(bestSet(ready(referenceDocument('everything'), edition2).setup, 120).complete).toBe(true);
  }, 120_000);

  it('stays within the budget, never does worse with more of it, and is quick with the largest that a document may ask for', () => {
    const { setup } = ready(referenceDocument('bad-store'));
    let before = Number.POSITIVE_INFINITY;
    for (const budget of [0, 1, 6, 12, 24, 40, 120]) {
      const found = bestSet(setup, budget);
      expect(found.effort).toBeLessThanOrEqual(budget);
      expect(found.harmAfter).toBeLessThanOrEqual(before);
      expect(found.nodes).toBeLessThan(20_000);
      before = found.harmAfter;
    }
  }, 60_000);
});

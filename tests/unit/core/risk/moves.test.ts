import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { AssessmentDocument } from '@/lib/core/document';
import { inPlace } from '@/lib/core/risk/candidates';
import { evaluateClosed } from '@/lib/core/risk/closed-form';
import { packsThatBurn } from '@/lib/core/risk/pack-counts';
import { score } from '@/lib/core/score';
import { ready } from '../../../support/evaluate';
import { referenceDocument } from '../../../support/reference-venues';
import { expectWithin } from '@/tests/support/expect-within';

const leftAlone = (overnightShare: number, extra: Partial<AssessmentDocument> = {}): AssessmentDocument => ({
  ...referenceDocument('bad-store'),
  inputs: { overnightCharging: 1, overnightShare },
  states: { 'attended-charging': 'absent' },
  ...extra,
});
const options = { seed: 7, draws: 2000, inputHash: 'x' };

describe('an action that moves an input', () => {
  it('turns charges left overnight into watched ones', () => {
    const { venue } = ready(leftAlone(0.4), edition2);
    const charges = venue.exposures.get('charges') ?? 0;
    expectWithin(venue.exposures.get('unwatchedCharges') ?? Number.NaN, 0.4 * charges, { rel: 1e-12 });
    const after = inPlace(venue, ['attended-charging']);
    expect(after.exposures.get('unwatchedCharges')).toBe(0);
    expect(after.exposures.get('watchedCharges')).toBe(charges);
  });

  it('never moves a figure that the document gives as counted', () => {
    const { venue } = ready(leftAlone(0.4, { exposures: { unwatchedCharges: 33 } }), edition2);
    expect(inPlace(venue, ['attended-charging']).exposures.get('unwatchedCharges')).toBe(33);
  });

  it.each([0.4, 1])('has a gain that is the difference of the two rooms, and a range from the same draws (overnight share %s)', (share) => {
    const { venue, setup, today } = ready(leftAlone(share), edition2);
    const action = score(edition2, leftAlone(share), options).actions.find((one) => one.control === 'attended-charging');
    const after = evaluateClosed(setup, inPlace(venue, ['attended-charging']));
    expect(action?.harmReduction).toBe(today.totalHarm - after.totalHarm);
    expect(action?.clearsStops).toEqual(expect.arrayContaining(['left-alone', 'overnight']));
    expect(action?.interval.p05).toBeLessThan(action?.harmReduction ?? 0);
    expect(action?.interval.p95).toBeGreaterThan(action?.harmReduction ?? 0);
  });
});

// Packs joined in parallel share their charge: common practice, no source.
describe('packs joined on one output of a charger', () => {
  const lot = (packsPerOutput: number, box: 'in place' | 'absent'): number =>
    packsThatBurn(ready({ ...referenceDocument('bad-store'), inputs: { packsPerOutput }, states: { 'charge-box': box } }, edition2).venue, 'lot', 'charging');

  it('burn together, whatever is around each of them', () => {
    expect(lot(1, 'in place')).toBe(1);
    expect(lot(4, 'in place')).toBe(4);
    expect(lot(6, 'in place')).toBe(6);
  });
  it('never make the lot smaller than the packs that touch, nor larger than openSpread', () => {
    const touching = lot(1, 'absent');
    expect(lot(2, 'absent')).toBe(Math.max(2, touching));
    expect(lot(12, 'in place')).toBe(edition2.constants.find((one) => one.id === 'openSpread')?.value);
  });
});

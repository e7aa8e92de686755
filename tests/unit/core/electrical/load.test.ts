import { describe, expect, it } from 'vitest';
import { circuitLoad } from '@/lib/core/electrical/load';
import { expectWithin } from '@/tests/support/expect-within';
import { model } from '@/tests/support/physics';
import { expectedOf, REFERENCE_VENUES, referenceDocument } from '@/tests/support/reference-venues';

describe('circuitLoad', () => {
  it.each(REFERENCE_VENUES)('gives %s the share of the independent implementation', (venue) => {
    const circuit = referenceDocument(venue).answers['electric-load'] as unknown as Parameters<typeof circuitLoad>[1];
    expectWithin(circuitLoad(model, circuit).loadShare, expectedOf(venue).derived.loadShare, { rel: 1e-12 });
  });
  it('lets a 16 A circuit at 230 V carry 2944 W for hours', () => {
    const { loadWatts, allowedWatts, loadShare } = circuitLoad(model, { chargers: 4, chargerWatts: 120, otherWatts: 1500, circuitAmps: 16, mainsVolts: 230 });
    expectWithin(allowedWatts, 2944, { rel: 1e-14 });
    expect(loadWatts).toBe(1980);
    expectWithin(loadShare, 1980 / 2944, { rel: 1e-14 });
  });
  it('is fully loaded at exactly the allowed power', () => {
    expectWithin(circuitLoad(model, { chargers: 10, chargerWatts: 184, otherWatts: 0, circuitAmps: 10, mainsVolts: 230 }).loadShare, 1, { rel: 1e-14 });
  });
});

import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { score } from '@/lib/core/score';
import { REFERENCE_VENUES, referenceDocument } from '../../support/reference-venues';

// The second edition is being prepared and is not in force; documents of the first must already score under it.
describe.each(REFERENCE_VENUES)('%s, written for the first edition, under the second', (venue) => {
  const result = score(edition2, referenceDocument(venue), { seed: 1, draws: 200, inputHash: 'x' });

  it('counts every new control as not sure and lists what it had to assume', () => {
    const known = new Set(edition1.controls.map((control) => control.id));
    const unsure = new Set(result.notSureControls);
    const asked = edition2.controls.filter((control) => !known.has(control.id) && !result.risks.every((risk) => risk.controls.every((use) => use.control !== control.id || use.state === 'not applicable')));
    expect(asked.length).toBeGreaterThan(10);
    for (const control of asked) expect(unsure.has(control.id), control.id).toBe(true);
    expect(result.assumedInputs.length).toBeGreaterThan(5);
  });

  it('stops where no number can be dialled', () => {
    expect(result.stops.map((stop) => stop.id)).toContain('no-number');
  });

  it('is finite and keeps inherent at or above today', () => {
    expect(Number.isFinite(result.totalHarm)).toBe(true);
    expect(result.inherentHarm).toBeGreaterThanOrEqual(result.totalHarm);
  });
});

import { describe, it } from 'vitest';
import { pathProduct } from '@/lib/core/risk/counted-uses';
import { expectWithin } from '../../../support/expect-within';

// CK-21: CCPS, Layer of Protection Analysis (2001), hexane surge tank example, from memory (MEM, H), arithmetic
// computed: initiator 0.1 a year, ignition 1, presence 0.5, fatality 0.5; dike PFD 1e-2, added function PFD 1e-2.
describe('a path of independent layers', () => {
  const alone = (control: number) => ({ control, reach: 1, group: -1 });
  const shares = [1, 0.5, 0.5];

  it.each([
    ['without a layer', [], 2.5e-2],
    ['behind the dike', [1e-2], 2.5e-4],
    ['behind the dike and the added function', [1e-2, 1e-2], 2.5e-6],
  ] as const)('lets through %s what the worked example says', (_, layers, expected) => {
    const failures = [...shares, ...layers];
    const uses = failures.map((__, index) => alone(index));
    expectWithin(0.1 * pathProduct(uses, uses.map((__, index) => index), failures), expected, { rel: 1e-12 });
  });
});

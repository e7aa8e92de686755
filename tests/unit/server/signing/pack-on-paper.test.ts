import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { PaperMaterial } from '@/lib/db/assessments/paper-material';
import { limitsInForce } from '@/lib/packs/school-rules';
import { packOnPaper } from '@/lib/server/signing/pack-on-paper';

const STYLE = { locale: 'en-GB', timeZone: 'Europe/London' };
const LIMITS = limitsInForce(edition2.packLimits, { packLimits: {} });

const row = (over: Partial<PaperMaterial['packs'][number]> = {}) => packOnPaper(LIMITS, {
  label: 'W-11', series: 4, parallel: 1, capacityMah: 1000, cellType: 'full-4-20', printedWh: null, maker: 'Tern', seller: null, boughtOn: null, state: 'in-use', place: 'shelf 2', area: { name: 'Store' },
  checks: [{ at: new Date('2026-11-20T09:00:00.000Z'), verdict: 'fit' }], ...over,
} as PaperMaterial['packs'][number], STYLE);

describe('a pack on the signed paper', () => {
  it('says full voltage, state and verdict in the words of the register', () => {
    expect(row()).toMatchObject({ kind: '4S 1,000 mAh', fullVoltage: '4.20 V', state: 'in use', lastCheck: `20 November 2026, ${edition2.packLimits.check?.verdicts.find(({ verdict }) => verdict === 'fit')?.title}`, place: 'Store, shelf 2' });
  });

  it.each([['full-4-20', 14.8], ['full-4-35', 15.2]])('has the energy of its own kind of cell: %s, 4 cells of 1 Ah, %f Wh', (cellType, energyWh) => {
    expect(row({ cellType }).energyWh).toBe(energyWh);
  });

  it('has no energy where nobody knows the cells, and the printed one where it is printed', () => {
    expect(row({ cellType: 'other-chemistry' }).energyWh).toBeNull();
    expect(row({ cellType: 'other-chemistry', printedWh: 12.6 }).energyWh).toBe(12.6);
  });
});

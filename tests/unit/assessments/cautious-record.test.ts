import { describe, expect, it } from 'vitest';
import { cautiousRecord } from '@/lib/assessments/cautious-record';
import { currentContent } from '@/lib/content/editions';
import { preventiveProducts } from '@/lib/core/risk/preventive-products';
import { score } from '@/lib/core/score';
import { secondDocument } from '@/tests/support/edition-2-venues';

const SEEN = { 'charge-runaway': { events: 1, exposure: 560 } };

describe('a record with the controls it was made behind', () => {
  it('leaves it to the engine when nothing was in force before', () => {
    expect(cautiousRecord(SEEN, { 'charge-runaway': 0.02 }, [])).toEqual(SEEN);
  });

  it('takes the least share of all versions and of today, whichever way the controls went', () => {
    const shareOf = (today: number, ...before: number[]) => cautiousRecord(SEEN, { 'charge-runaway': today }, before.map((share) => ({ 'charge-runaway': share })))['charge-runaway']?.preventiveProduct;
    expect(shareOf(0.02, 0.5)).toBe(0.02);
    expect(shareOf(0.5, 0.02, 0.3)).toBe(0.02);
  });

  it('never makes a quiet record say more, nor an event weigh less, than today’s controls alone would', () => {
    const document = secondDocument('ordinary-classroom');
    const today = preventiveProducts(currentContent, document);
    const risk = (record: Parameters<typeof cautiousRecord>[0]) => score(currentContent, { ...document, record }, { seed: 1, draws: 100, inputHash: 'test' }).risks.find(({ id }) => id === 'charge-runaway')?.topFrequencyMean ?? NaN;
    const before = [{ 'charge-runaway': (today['charge-runaway'] ?? 1) / 10 }];
    for (const events of [0, 2]) {
      const seen = { 'charge-runaway': { events, exposure: 5000 } };
      expect(risk(cautiousRecord(seen, today, before))).toBeGreaterThan(risk(seen));
    }
  });
});

describe('what preventive controls let through', () => {
  it('is what the engine takes for a record without a share of its own', () => {
    const document = { ...secondDocument('ordinary-classroom'), record: SEEN };
    const learning = score(currentContent, document, { seed: 1, draws: 100, inputHash: 'test' }).risks.find(({ id }) => id === 'charge-runaway')?.learning;
    expect(learning?.record).toMatchObject({ events: 1, exposure: 560, assumedToday: true, preventiveProduct: preventiveProducts(currentContent, document)['charge-runaway'] });
  });
});

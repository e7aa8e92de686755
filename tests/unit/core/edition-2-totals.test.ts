import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { AssessmentDocument } from '@/lib/core/document';
import { stageOf } from '../../support/edition-steps';
import { ADDED, addedRows, letThrough, rateRows, stepRows } from '../../support/edition-tables';
import { ready } from '../../support/evaluate';
import { expectWithin } from '../../support/expect-within';
import { REFERENCE_VENUES, referenceDocument, type ReferenceVenue } from '../../support/reference-venues';

const doc = readFileSync('docs/editions.md', 'utf8').split('\n');

describe('docs/editions.md', () => {
  it.each<[string, () => readonly string[]]>([
    ['the totals, one change after the other', () => stepRows('totalHarm')],
    ['battery fires', () => stepRows('batteryFiresPerSeason').filter((_, count) => count === 0 || count > 6)],
    ['the added controls in each state', addedRows],
    ['the rates', rateRows],
  ])('says of %s what is worked out', (_, rows) => {
    expect(rows().filter((row) => !doc.includes(row))).toEqual([]);
  });
});

describe.each(REFERENCE_VENUES)('%s: the second edition with every change taken out', (venue) => {
  it('is the first', () => {
    const { content, document } = stageOf(venue, []);
    const [first, stripped] = [ready(referenceDocument(venue)), ready(document, content)];
    edition1.scenarios.forEach(({ id, branches }, index) => {
      const before = first.today.risks[index];
      const after = stripped.today.risks[content.scenarios.findIndex((one) => one.id === id)];
      expect(after?.grade, id).toBe(before?.grade);
      branches.forEach((branch, at) => {
        const harm = before?.branches[at]?.harm ?? Number.NaN;
        expectWithin(after?.branches[at]?.harm ?? Number.NaN, harm, harm === 0 ? { abs: 0 } : { rel: 1e-9 });
      });
    });
  });
});

/** A room as the first edition knew it: its old controls as they were, of the added ones nothing. */
function asFirstKnew(venue: ReferenceVenue): AssessmentDocument {
  const { record, ...document } = referenceDocument(venue);
  return { ...document, states: Object.fromEntries(resolveVenue(edition1, { ...document, record }).states) };
}

describe('a rate', () => {
  it('is the first edition’s, divided by what the added controls let through while nobody is sure, to two digits', () => {
    for (const { id, rate, preventive } of edition2.scenarios) {
      const before = edition1.scenarios.find((one) => one.id === (id === 'charge-unwatched' ? 'charge-runaway' : id));
      expect(rate.mean, id).toBe(Number(((before?.rate.mean ?? Number.NaN) / letThrough(preventive)).toPrecision(2)));
      expect(rate.kind).toBe('our judgement');
    }
  });

  it('of fires with every control absent comes to less than one a season of the bad store, in all scenarios together', () => {
    const { venue } = ready(stageOf('bad-store', []).document, edition2);
    const fires = edition2.scenarios.reduce((sum, scenario) => sum + scenario.rate.mean * (venue.exposures.get(scenario.exposureBase) ?? 0) * scenario.fireShare, 0);
    expect(fires).toBeGreaterThan(0.5);
    expect(fires).toBeLessThan(1);
  });

  // amendment A22: a fire every season from 900 charges of a crashed pack would be absurd, and so would one fall in 33 seasons
  it.each([['charge-after-crash', 5, 10], ['trip-and-cable', 2, 5]])('of %s gives one event in %d to %d seasons with nothing done', (id, least, most) => {
    const { venue } = ready(stageOf('bad-store', []).document, edition2);
    const scenario = edition2.scenarios.find((one) => one.id === id);
    const once = 1 / ((scenario?.rate.mean ?? Number.NaN) * (venue.exposures.get(scenario?.exposureBase ?? '') ?? 0));
    expect(once).toBeGreaterThan(least);
    expect(once).toBeLessThan(most);
  });
});

describe.each(REFERENCE_VENUES)('%s, with none of the added questions answered', (venue) => {
  it('keeps every frequency of the first edition, within the rounding of rates and shares', () => {
    const document = asFirstKnew(venue);
    const [first, second] = [ready(document), ready({ ...document, inputs: { ...document.inputs, overnightCharging: 0 } }, edition2)];
    edition1.scenarios.forEach(({ id, branches }, index) => {
      const [before, after] = [first.today.risks[index], second.today.risks[edition2.scenarios.findIndex((one) => one.id === id)]];
      if (before === undefined || before.topFrequency === 0) return;
      expectWithin(after?.topFrequency ?? Number.NaN, before.topFrequency, { rel: 0.04 });
      branches.forEach((branch, at) => expectWithin(after?.branches[at]?.frequency ?? Number.NaN, before.branches[at]?.frequency ?? Number.NaN, { rel: 0.04 }));
    });
    expect(ADDED.filter((control) => !['not sure', 'not applicable'].includes(second.venue.states.get(control) ?? ''))).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { writeCsv } from '@/lib/csv/write-csv';
import { incidentColumns, IncidentQuerySchema, type ListedIncident, searchIncidents } from '@/lib/incidents/incident-list';
import { sayCorrected, sayFact } from '@/lib/incidents/say-fact';
import { factsForTest, INCIDENT_AT } from '@/tests/support/incident-for-tests';

const names = { dates: { locale: 'en-GB', timeZone: 'Europe/London' }, places: new Map([['hall', 'Hall'], ['bench', 'Charging bench']]) };
const listed = (number: number, given: Partial<ListedIncident> = {}): ListedIncident => ({ id: `i${number}`, number, state: 'recorded', facts: factsForTest(), byName: 'K. M.', recordedAt: INCIDENT_AT, closedAt: null, ...given });
const all = [listed(1, { state: 'closed', facts: factsForTest({ kinds: ['fire'], packs: [{ label: 'W-11', part: 'involved' }, { label: 'W-07', part: 'nearby' }] }) }), listed(2, { facts: factsForTest({ where: { siteId: 'hall', areaId: 'bench', place: null }, whatHappened: '=1+1' }) })];
const found = (query: Record<string, unknown>) => searchIncidents(all, IncidentQuerySchema.parse(query), names).map(({ number }) => number);

describe('the list of incidents', () => {
  it.each<[Record<string, unknown>, readonly number[]]>([
    [{}, [1, 2]], [{ q: 'w-07' }, [1]], [{ q: 'CHARGING bench' }, [2]], [{ q: 'fire bench' }, []], [{ state: 'open' }, [2]], [{ state: 'closed' }, [1]], [{ kind: 'fire' }, [1]], [{ state: 'nonsense', q: ['a', 'b'] }, [1, 2]],
  ])('asked for %j gives %j', (query, numbers) => { expect(found(query)).toEqual(numbers); });

  it('is exported with harmless cells, and without the people', () => {
    const csv = writeCsv(incidentColumns(names), all);
    expect(csv.split('\r\n')).toHaveLength(3);
    expect(csv).toContain("'=1+1");
    expect(csv).not.toMatch(/initials/i);
  });
});

describe('a fact in words', () => {
  it('says which packs took part and which only lay near', () => { expect(sayFact('packs', all[0]!.facts, names)).toBe('W-11; W-07 (only lay near)'); });
  it('says the place by its name, and one that is gone as gone', () => {
    expect(sayFact('where', all[1]!.facts, names)).toBe('Hall, Charging bench');
    expect(sayFact('where', factsForTest({ where: { siteId: 'x', areaId: null, place: 'door' } }), names)).toBe('a place that is no longer kept, door');
  });
  it('says a guess as a guess, in the school’s own time', () => { expect(sayFact('when', factsForTest({ when: { at: '2026-07-01T12:00:00.000Z', known: false } }), names)).toBe('About 1 July 2026 at 13:00 BST'); });
  it('says nothing where nothing was written', () => { expect([sayFact('firstAid', factsForTest(), names), sayFact('packs', factsForTest(), names), sayFact('contacted', factsForTest(), names)]).toEqual(['Nothing written', 'None', 'Nobody yet']); });
  it('shows what has another shape as it is kept', () => { expect([sayCorrected('hurt', 'yes', names), sayCorrected('hurt', 5, names)]).toEqual(['Yes', '5']); });
});

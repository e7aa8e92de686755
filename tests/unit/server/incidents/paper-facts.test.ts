import { describe, expect, it } from 'vitest';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { incidentPaper } from '@/lib/papers/incident-paper';
import { wordsOf } from '@/lib/papers/paper';
import { incidentPaperFacts, type PaperOfIncident } from '@/lib/server/incidents/paper-facts';
import { factsForTest, INCIDENT_AT } from '@/tests/support/incident-for-tests';

const PAPER: PaperOfIncident = {
  number: 'SB-7', school: 'Tern Lane School', format: 'A4', language: 'en-GB', madeAt: INCIDENT_AT.toISOString(), fingerprint: 'abcd', verifyAt: 'https://school.example/verify', twinAt: 'https://school.example/incidents/3/paper', logEnd: null, photoHashes: ['f00d'], officer: { name: 'Ruth Oakes', post: 'deputy head' },
  names: { dates: { locale: 'en-GB', timeZone: 'UTC' }, places: new Map() }, riskTitle: (risk) => `risk ${risk}`,
};

const INCIDENT: IncidentRecord = {
  id: 'i', number: 3, state: 'in-review', revision: 1, first: factsForTest({ hurt: 'not-sure' }), facts: factsForTest({ hurt: 'no', kinds: ['fire', 'injury'] }),
  corrections: [{ number: 1, field: 'hurt', before: 'not-sure', after: 'no', reason: 'asked', byName: 'R. O.', at: INCIDENT_AT }, { number: 2, field: 'persons', before: 0, after: 1, reason: 'told on Monday', byName: 'R. O.', at: INCIDENT_AT }],
  followUps: [{ kind: 'risk', text: 'store-full', byName: 'R. O.', at: INCIDENT_AT }], persons: [{ id: 'p', role: 'student', initials: null, hurt: 'no', breathed: 'yes', firstAid: null, removedAt: null }],
  photos: [], packs: [{ packId: 'w', label: 'W-11', state: 'isolated', placeNow: 'outdoor-spot', placeNote: 'left box' }, { packId: 'x', label: 'W-12', state: 'isolated', placeNow: null, placeNote: null }], unknownLabels: [],
  actions: [{ id: 'a', title: 'Set 1C', ownerName: 'K. M.', dueOn: '2026-12-01', state: 'open' }], reviews: [{ versionId: 'v', title: 'Hall', settledAt: null }], byId: 'k', byName: 'K. M.', recordedAt: INCIDENT_AT, closedAt: null, closedNote: null,
};

describe('an incident on paper', () => {
  const words = wordsOf(incidentPaper(incidentPaperFacts(INCIDENT, PAPER))).join('\n');

  it.each(['Incident 3: Fire or sparks; somebody was hurt in another way', 'Before: Not sure. Corrected by R. O.', 'W-11', 'Outdoor spot, left box', 'nobody has said', 'Risk it belongs to: risk store-full', '1 December 2026', 'Hall', 'Write the cause', 'f00d', 'Screening aid'])('says %s', (said) => { expect(words).toContain(said); });

  it('says nothing is open once it is closed', () => { expect(incidentPaperFacts({ ...INCIDENT, state: 'closed' }, PAPER).open).toEqual([]); });
});

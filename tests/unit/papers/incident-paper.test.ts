import { describe, expect, it } from 'vitest';
import { incidentPaper, type IncidentPaperFacts } from '@/lib/papers/incident-paper';
import { wordsOf } from '@/lib/papers/paper';

const FACTS: IncidentPaperFacts = {
  number: 'SB-7', incidentNumber: 3, title: 'A pack puffed up', school: 'Tern Lane School', when: '25 November 2026', state: 'in review', format: 'A4', language: 'en-GB', madeAt: '2026-11-26T10:00:00.000Z',
  fingerprint: 'abcd', verifyAt: 'https://school.example/verify', twinAt: 'https://school.example/incidents/3/paper', logEnd: { number: 412, hash: '5e'.repeat(32) }, caution: 'Screening aid.', recordedBy: 'K. M., 25 November 2026',
  facts: [{ name: 'Was anybody hurt?', value: 'No', corrections: ['Before: Not sure. Corrected by R. O.: asked the student.'] }], packs: [], persons: [], photoHashes: [], followUps: [], actions: [], reviews: [],
  open: ['Write the cause, or that it could not be found'], officer: { name: 'Ruth Oakes', post: 'deputy head' },
};
const words = (given: Partial<IncidentPaperFacts> = {}) => wordsOf(incidentPaper({ ...FACTS, ...given })).join('\n');

describe('the paper of an incident', () => {
  it('says what was said first beside what is said now', () => { expect(words()).toContain('Before: Not sure. Corrected by R. O.: asked the student.'); });

  it('says on its cover what is still open, and nothing of it once it is closed', () => {
    expect(words()).toContain('Write the cause, or that it could not be found.');
    expect(words({ open: [] })).not.toContain('Not closed yet');
  });

  it('says so where there is nothing: no pack, nobody, no photo, no action, no paper it contradicts', () => {
    for (const said of ['No pack of the register was linked.', 'Nobody is written down.', 'No photo is kept', 'Nothing was added yet.', 'No corrective action.', 'contradicts no signed assessment']) expect(words()).toContain(said);
  });

  it('holds everything it is given', () => {
    const all = words({
      packs: [{ label: 'W-11', state: 'isolated', place: 'Outdoor spot' }], persons: [{ who: 'Student, K. M.', hurt: 'No', breathed: 'Yes', firstAid: 'doctor the same day' }], photoHashes: ['f00d', 'beef'],
      followUps: [{ title: 'Cause', words: 'charged at 2C', by: 'R. O.' }], actions: [{ title: 'Set 1C', owner: 'K. M.', due: '1 December 2026', state: 'open' }], reviews: ['Hall, version 2'],
    });
    for (const said of ['W-11', 'Outdoor spot', 'Student, K. M.', 'doctor the same day', '2 photos', 'f00d, beef', 'Cause: charged at 2C', 'Set 1C', '1 December 2026', 'Hall, version 2']) expect(all).toContain(said);
  });

  it('is signed by the officer alone', () => { expect(incidentPaper(FACTS).signatures).toEqual([{ field: 'Officer', title: 'Safety officer', name: 'Ruth Oakes', post: 'deputy head' }]); });
});

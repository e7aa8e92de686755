import { edition2 } from '@/lib/content/edition-2';
import type { AssessmentDocument } from '@/lib/core/document';
import { score } from '@/lib/core/score';
import type { AssessmentFacts } from '@/lib/papers/assessment/facts';

/** Facts of a paper about a document of the second edition; school, people and makes are invented. */
export function assessmentFacts(document: AssessmentDocument, over: Partial<AssessmentFacts> = {}): AssessmentFacts {
  return {
    content: edition2, document, result: score(edition2, document, { seed: 1, draws: 1000, inputHash: 'sha256-of-the-input' }), edition: 2,
    number: 'SB-7F2K-0031', version: 2, state: 'for signature', format: 'A4', language: 'en',
    madeAt: '2026-11-24T16:05:00.000Z', madeOn: '24 November 2026', fingerprint: '9c41 07be 5d20 e83a', verifyAt: 'https://sandbucket.example/verify', twinAt: 'https://sandbucket.example/assessments/9/paper',
    school: { name: 'Heron Weir School', employer: 'Heron Weir Trust' }, place: 'Room 9 and small hall', keyHolder: 'caretaker, 555 0107', season: 'Season 2026/27',
    preparer: { name: 'Åsa Łukasiewicz', post: 'teacher', telephone: '555 0101', employer: 'Heron Weir Trust' },
    officer: { name: 'Γιώργος Νικολάου', post: 'safety officer', telephone: '555 0102', employer: 'Heron Weir Trust' },
    visit: { on: '20 November 2026', by: 'Γιώργος Νικολάου', seen: 'room, table, store, outdoor spot' }, onTrust: 'date of the last test of the circuit',
    signedFor: 'today', inForceUntil: '31 July 2027', covers: { packs: 26, storedWh: 330, sessions: 60, people: 14 },
    rulesConsulted: [{ what: 'Local fire code, limit of energy', asked: '2 November 2026', answer: 'none named' }],
    attachments: [{ title: 'Letter of the insurer', fingerprint: '77aa 01bc' }],
    acceptances: [], actions: [{ what: 'Lay a slab under the chargers', owner: 'Å. Ł.', due: '9 January 2027', state: 'open', note: '', control: 'mineral-surface' }],
    answers: [
      { id: 'team-packs', section: 'team', question: 'How many packs?', answer: '24', standing: 'answered', note: '', evidence: 'register', toFindOut: '' },
      { id: 'room-ach', section: 'room', question: 'How fast does its air change?', answer: '', standing: 'not sure', note: 'fan behind the ceiling', evidence: '', toFindOut: 'caretaker, 1 December 2026' },
      { id: 'travel-kind', section: 'travel', question: 'How do packs travel?', answer: '', standing: 'does not apply', note: '', evidence: '', toFindOut: '' },
    ],
    packs: [{ label: 'HW-01', kind: '4S 850 mAh', energyWh: 12.58, fullVoltage: '4.20 V', source: 'Kestrel Cells', age: '14 months', lastCheck: '20 Nov 2026, fit', state: 'in use', place: 'store, box 3' }],
    incidents: [], comments: [], retention: 'Initials and roles of pupils are kept for three years.', logEnd: { number: 412, hash: '5e'.repeat(32) },
    ...over,
  };
}

import { describe, expect, it } from 'vitest';
import { incidentPaper, type IncidentPaperFacts } from '@/lib/papers/incident-paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { textOf } from '@/tests/support/pdf/tools';

const flat = (text: string): string => text.replace(/\s+/g, ' ').trim();
/** Numbered words, so that what is cut off is missed. */
const long = (letters: number): string => Array.from({ length: 1000 }, (_, index) => `hiss${index}`).join(' ').slice(0, letters).trim();
const NAMES = ['Called or warned at once', 'Was anybody hurt?', 'Did anybody breathe smoke?', 'What it was', 'Packs', 'When', 'Where', 'What was going on', 'In their words', 'First aid', 'What was done', 'Told afterwards'];

function facts(format: 'A4' | 'LETTER', value: string): IncidentPaperFacts {
  return {
    number: 'SB-7F2K-Q9XM', incidentNumber: 12, title: 'Fire or sparks; smoke or venting; a pack puffed up; somebody was burned; somebody was hurt in another way', school: 'Federated Secondary School of Saint Bartholomew and Saint Hildegard, northern campus',
    when: '25 November 2026 at 20:13 GMT', state: 'closed', format, language: 'en-GB', madeAt: '2026-11-26T10:00:00.000Z', fingerprint: '9c41 07be 5d20 e83a', verifyAt: 'https://sandbucket.federation-of-schools.example.org/verify?number=SB-7F2K-Q9XM',
    twinAt: 'https://sandbucket.federation-of-schools.example.org/incidents/018f2c5e-7b1a-7c3d-9e2f-1a2b3c4d5e6f/paper', logEnd: { number: 412, hash: '5e'.repeat(32) }, caution: 'Screening aid.', recordedBy: 'Wilhelmina Anastasia Konstantinopoulou-Featherstonehaugh, 25 November 2026',
    facts: NAMES.map((name, index) => ({ name, value: index > 8 ? value : 'No', corrections: index === 1 ? ['Before: not sure. Corrected by R. O.: asked the student on Monday.'] : [] })),
    packs: Array.from({ length: 24 }, (_, index) => ({ label: `W-${index + 10}`, state: 'isolated', place: 'Outdoor spot, left box' })), persons: [{ who: 'student, K. M.', hurt: 'No', breathed: 'Yes', firstAid: 'doctor the same day' }], photoHashes: ['f00d'.repeat(16)],
    followUps: [{ title: 'Cause', words: value, by: 'R. O.' }], actions: [{ title: 'Set 1C', owner: 'K. M.', due: '1 December 2026', state: 'open' }], reviews: ['Hall, version 2'], open: [],
    officer: { name: 'Wilhelmina Anastasia Konstantinopoulou-Featherstonehaugh of the Northern Consortium', post: 'deputy head and safety officer of the federation' },
  };
}

describe.each(['A4', 'LETTER'] as const)('the file of an incident on %s', (format) => {
  it.each([['short', 'Nothing written'], ['as long as anybody may write', long(4000)]])('keeps its cover on one page, and says all it is given once: %s', async (_, value) => {
    const given = facts(format, value);
    const pages = textOf(await renderPaper(<PaperOfBlocks paper={incidentPaper(given)} />), '-layout').split('\f').slice(0, -1).map(flat);
    expect(pages[0]).toContain('Cover');
    expect(pages[0]).toContain('Safety officer: Wilhelmina');
    expect(pages[1]).toMatch(/^Incident 12.*Sections 1 to \d/);
    const all = pages.join(' ');
    for (const { label } of given.packs) expect(all.split(label).length - 1, label).toBe(1);
    for (const said of ['Corrected by R. O.', 'doctor the same day', 'Set 1C', 'Hall, version 2', 'entry 412']) expect(all, said).toContain(said);
    for (const word of value.split(' ')) expect(all.split(` ${word} `).length - 1, word).toBeGreaterThanOrEqual(4);
  }, 120_000);

  it('has the same bytes for the same facts', async () => {
    const made = async () => Buffer.from(await renderPaper(<PaperOfBlocks paper={incidentPaper(facts(format, 'No'))} />));
    expect((await made()).equals(await made())).toBe(true);
  }, 120_000);
});

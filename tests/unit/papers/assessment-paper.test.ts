import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { type Paper, wordsOf } from '@/lib/papers/paper';
import { assessmentFacts } from '../../support/assessment-facts';
import { referenceDocument } from '../../support/reference-venues';

const badStore = assessmentFacts(referenceDocument('bad-store'));
const words = (paper: Paper): string => wordsOf(paper).join('\n');
const section = (paper: Paper, id: string): string => words({ ...paper, cover: [], signatures: [], sections: paper.sections.filter((one) => one.id === id) });

describe('the paper of an assessment', () => {
  const paper = assessmentPaper(badStore);

  it('names every risk that applies once in its ranking, with the grade today and after', () => {
    const ranking = paper.sections.find((one) => one.id === 'risks')?.blocks.find((block) => block.kind === 'table');
    const applying = badStore.result.risks.filter((risk) => risk.grade !== 'not applicable');
    expect(ranking?.kind === 'table' ? ranking.rows.length : 0).toBe(applying.length);
    for (const risk of applying) expect(section(paper, 'risks').split(`${risk.rank} ${risk.title}`).length - 1, risk.id).toBe(1);
  });
  it('names every stop condition, and says on the cover that nobody may start while one holds', () => {
    for (const stop of edition2.stops) expect(section(paper, 'stops')).toContain(stop.title);
    expect(words({ ...paper, sections: [] })).toContain('Do not charge here yet');
    expect(section(paper, 'stops').match(/^HOLDS$/gm)?.length).toBe(badStore.result.stops.length);
  });
  it('prints an acceptance on the first page, with what replaces the measure and when it ends', () => {
    const [stop] = badStore.result.stops;
    const accepted = assessmentPaper({ ...badStore, acceptances: [{ stop: stop?.id ?? '', reason: 'The net is being mended.', replacedBy: 'nobody inside or within 5 m', until: '12 December 2026', paper: null, by: 'Γ. Ν.' }] });
    const cover = words({ ...accepted, sections: [] });
    expect(cover).toContain('until 12 December 2026');
    expect(cover).toContain('nobody inside or within 5 m');
    expect(section(accepted, 'stops').match(/^accepted$/gm)?.length).toBe(1);
  });
  it('lists what nobody is sure of with who will find out, and what does not apply as not asked', () => {
    expect(section(paper, 'open')).toContain('caretaker, 1 December 2026');
    expect(section(paper, 'answers')).toContain('How do packs travel?');
    expect(section(paper, 'answers')).not.toContain('How do packs travel?\nHow');
  });
  it('gives the fire service address, energy and who needs help, and says loudly what nobody filled in', () => {
    expect(section(paper, 'fire-service')).toContain('NOT FILLED IN');
  });
  it('says both signers in full and leaves a place for each signature', () => {
    expect(paper.signatures.map((place) => [place.field, place.name])).toEqual([['Preparer', 'Åsa Łukasiewicz'], ['Officer', 'Γιώργος Νικολάου']]);
    expect(section(paper, 'scope')).toContain('555 0102');
  });
  it('says of a copy that is not signed that it permits nothing', () => {
    expect(words({ ...assessmentPaper({ ...badStore, state: 'draft' }), sections: [] })).toContain('This copy permits nothing');
  });
  it('is the same for the same facts, and never says undefined or NaN', () => {
    expect(assessmentPaper(badStore)).toEqual(paper);
    expect(words(paper)).not.toMatch(/undefined|NaN|\[object/);
  });
  it('numbers no section twice', () => {
    const ids = paper.sections.map((one) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

import { beforeAll, describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { AssessmentFacts } from '@/lib/papers/assessment/facts';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import type { Paper } from '@/lib/papers/paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { PAPER } from '@/lib/pdf/render/paper-size';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { signatureRectangle } from '@/lib/pdf/render/signature-boxes';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';
import { assessmentFacts } from '../../support/assessment-facts';
import { referenceDocument } from '../../support/reference-venues';

const base = assessmentFacts(referenceDocument('ordinary-classroom'));
/** The longest that the forms let somebody type. */
const words = (letters: number): string => 'Nobody charges there until it stands '.repeat(20).slice(0, letters - 1).trim();
const FIVE: AssessmentFacts['acceptances'] = edition2.stops.slice(0, 5).map((stop) => ({ stop: stop.id, reason: words(300), replacedBy: words(300), until: '12 December 2026', paper: words(160), by: 'Γιώργος Νικολάου' }));
const packs: AssessmentFacts['packs'] = Array.from({ length: 40 }, (_, index) => ({ ...base.packs[0]!, label: `HW-${String(index + 1).padStart(3, '0')}` }));
const ACTIONS: AssessmentFacts['actions'] = ['Lay a slab under the chargers', 'Hang a notice at the door', 'Ask the fire authority for its limit'].map((what) => ({ what, owner: 'Å. Ł.', due: '9 January 2027', state: 'open', note: '', control: null }));

const render = (paper: Paper): Promise<Uint8Array> => renderPaper(<PaperOfBlocks paper={paper} />);
const pagesOf = (pdf: Uint8Array): readonly string[] => textOf(pdf, '-layout').split('\f').slice(0, -1);
const times = (text: string, part: string): number => text.split(part).length - 1;
/** As it is read, without the breaks of its lines. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe.each(['A4', 'LETTER'] as const)('the file of an assessment on %s', (format) => {
  const facts: AssessmentFacts = { ...base, format, acceptances: FIVE, packs, actions: ACTIONS };
  const paper = assessmentPaper(facts);
  let pdf: Uint8Array = new Uint8Array();
  beforeAll(async () => { pdf = await render(paper); }, 120_000);

  it('keeps its cover on one page with five acceptances of the longest text', () => {
    const pages = pagesOf(pdf);
    expect(pages[0]).toContain('Cover');
    expect(times(flat(pages[0] ?? ''), 'until 12 December 2026')).toBe(5);
    expect(pages[1]).toContain('1 Scope and people');
  });

  it('leaves both places for signatures free', () => {
    const found = runTool('pdftotext', ['-bbox', '-f', '1', '-l', '1', asFile(pdf), '-']).text.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</g);
    const height = PAPER[format].height;
    const inside = Array.from(found).filter(([, left, top, right, bottom]) => (['Preparer', 'Officer'] as const).some((role) => {
      const [x0, y0, x1, y1] = signatureRectangle(format, role);
      return Number(right) > x0 && Number(left) < x1 && height - Number(bottom) < y1 && height - Number(top) > y0;
    }));
    expect(inside.map(([, , , , , word]) => word)).toEqual([]);
  });

  it('names every risk, stop condition, action, pack and signer where it belongs, once', () => {
    const pages = pagesOf(pdf);
    const section = (title: string, next: string): string => { const all = flat(pages.join(' ')); return all.slice(all.indexOf(title), all.indexOf(next)); };
    const ranking = section('Risks that remain, most harm first', 'Agreed');
    for (const risk of base.result.risks.filter(({ grade }) => grade !== 'not applicable')) expect(times(ranking, `${risk.rank} ${risk.title.slice(0, 12)}`), risk.title).toBe(1);
    const actions = section('Agreed What', 'Controls Partly');
    for (const { what } of ACTIONS) expect(times(actions, what.slice(0, 14)), what).toBe(1);
    const stops = flat(textOf(pdf, '-f', '2', '-l', '4'));
    for (const stop of edition2.stops) expect(times(stops, stop.title.split(' ').slice(0, 3).join(' ')), stop.title).toBeGreaterThan(0);
    for (const { label } of packs) expect(times(pages.join(' '), label), label).toBe(1);
    for (const signer of [facts.preparer, facts.officer]) expect(flat(pages[0] ?? '')).toContain(signer.name);
  });

  it('leaves no heading alone at the foot of a page and no page nearly empty', () => {
    const pages = pagesOf(pdf);
    const titles = new Set(paper.sections.map(({ title }, index) => `${index + 1} ${title}`));
    pages.forEach((page, index) => {
      const lines = page.split('\n').map((line) => line.trim()).filter((line) => line !== '');
      // One line at the head, two at the foot.
      const body = lines.slice(1, -2);
      expect(titles.has(body.at(-1) ?? ''), `page ${index + 1}`).toBe(false);
      if (index < pages.length - 1) expect(body.length, `page ${index + 1}`).toBeGreaterThan(6);
    });
  });

  it('is no longer than somebody reads before signing it', () => { expect(pagesOf(pdf).length).toBeLessThanOrEqual(27); });
});

describe('the file of an assessment', () => {
  it('has the same bytes for the same facts', async () => {
    const small = { ...assessmentPaper(base), sections: assessmentPaper(base).sections.slice(0, 4) };
    expect(Buffer.from(await render(small)).equals(Buffer.from(await render(structuredClone(small))))).toBe(true);
  }, 120_000);
});

import { beforeAll, describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { AssessmentFacts } from '@/lib/papers/assessment/facts';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import type { Paper } from '@/lib/papers/paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { PAPER } from '@/lib/pdf/render/paper-size';
import { writableModel } from '@/lib/pdf/render/fonts/writable';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { signatureRectangle } from '@/lib/pdf/render/signature-geometry';
import { answersOnPaper } from '@/lib/server/signing/answers-on-paper';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';
import { assessmentFacts } from '../../support/assessment-facts';
import { referenceDocument } from '../../support/reference-venues';
import { answerRecord, versionRecord } from '../../support/version-for-tests';

const document = referenceDocument('ordinary-classroom');
const note = 'Seen on Monday with the caretaker, key 14';
const version = versionRecord({ answers: Object.entries(document.answers).map(([id, value], index) => answerRecord(id, value, { note: index % 3 === 0 ? note : '' })) });
const base = assessmentFacts(document, { answers: answersOnPaper(edition2, version, []) });
/** The longest that the forms let somebody type. */
const words = (letters: number): string => 'Nobody charges there until it stands '.repeat(20).slice(0, letters - 1).trim();
const FIVE: AssessmentFacts['acceptances'] = edition2.stops.slice(0, 5).map((stop) => ({ stop: stop.id, reason: words(300), replacedBy: words(300), until: '12 December 2026', paper: words(160), by: 'Γιώργος Νικολάου' }));
/** Of people, places and addresses, as long as anybody has one. */
const LONG = 'Wilhelmina Anastasia Konstantinopoulou-Featherstonehaugh of the Northern Consortium';
const PLACE = 'Multi-purpose hall of the old gymnasium, ground floor, behind the changing rooms, Saint Bartholomew and Saint Hildegard campus';
const ADDRESS = 'https://sandbucket.federation-of-schools.example.org';
const packs: AssessmentFacts['packs'] = Array.from({ length: 30 }, (_, index) => ({ ...base.packs[0]!, label: `HW-${String(index + 1).padStart(3, '0')}` }));
const ACTIONS: AssessmentFacts['actions'] = ['Lay a slab under the chargers', 'Hang a notice at the door', 'Ask the fire authority for its limit'].map((what) => ({ what, owner: 'Å. Ł.', due: '9 January 2027', state: 'open', note: '', control: null }));

const render = (paper: Paper): Promise<Uint8Array> => renderPaper(<PaperOfBlocks paper={paper} />);
const pagesOf = (pdf: Uint8Array): readonly string[] => textOf(pdf, '-layout').split('\f').slice(0, -1);
const times = (text: string, part: string): number => text.split(part).length - 1;
/** What stands between the one line at the head and the two at the foot. */
const linesOf = (page: string): readonly string[] => page.split('\n').map((line) => line.trim()).filter((line) => line !== '').slice(1, -2);
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
    expect(flat(pages[0] ?? '')).toContain('Accepted by Γιώργος Νικολάου until 12 December 2026:');
    for (const stop of edition2.stops.slice(0, 5)) expect(flat(pages[0] ?? '')).toContain(stop.title);
    expect(pages[1]).toContain('1 Scope and people');
  });

  it('keeps it there with the longest names, places and addresses too, and five acceptances by different people', async () => {
    const person = (post: string) => ({ name: LONG, post, telephone: '555 0101', employer: 'Federation of schools of the northern coast' });
    const longest = assessmentPaper({
      ...facts, place: PLACE, school: { name: PLACE, employer: PLACE }, preparer: person('head of the department of design, technology and extracurricular sport'), officer: person('deputy head and safety officer of the federation'),
      verifyAt: `${ADDRESS}/verify?number=SB-7F2K-Q9XM`, twinAt: `${ADDRESS}/assessments/018f2c5e-7b1a-7c3d-9e2f-1a2b3c4d5e6f/paper`, acceptances: FIVE.map((one, index) => ({ ...one, by: LONG, until: `${index + 3} December 2026` })),
    });
    const [cover, next] = pagesOf(await render({ ...longest, sections: longest.sections.slice(0, 1) }));
    for (const said of ['Do not charge here yet', '5 stop conditions are accepted in writing.', 'In force until', 'Prepared by: Wilhelmina', 'Checked and signed by: Wilhelmina', 'page 1 of 2']) expect(flat(cover ?? '')).toContain(said);
    expect(flat(next ?? '').split(flat(LONG)).length - 1).toBe(2);
  }, 60_000);

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
    const section = (title: string, next: string): string => { const all = flat(pages.flatMap(linesOf).join(' ')); return all.slice(all.indexOf(title), all.indexOf(next)); };
    const ranking = section('Risks that remain, most harm first', 'Agreed');
    for (const risk of base.result.risks.filter(({ grade }) => grade !== 'not applicable')) expect(times(ranking, `${risk.rank} ${risk.title.slice(0, 12)}`), risk.title).toBe(1);
    const actions = section('Agreed What', 'Controls Partly');
    for (const { what } of ACTIONS) expect(times(actions, what.slice(0, 14)), what).toBe(1);
    const stops = section('Conditions that hold', '4 Risks that remain');
    for (const stop of edition2.stops) expect(times(stops, stop.title.split(' ').slice(0, 3).join(' ')), stop.title).toBeGreaterThan(0);
    for (const { label } of packs) expect(times(pages.join(' '), label), label).toBe(1);
    for (const signer of [facts.preparer, facts.officer]) expect(flat(pages[0] ?? '')).toContain(signer.name);
  });

  it('leaves no heading alone at the foot of a page and no page nearly empty', () => {
    const pages = pagesOf(pdf);
    const titles = new Set([...paper.sections.map(({ title }, index) => `${index + 1} ${title}`), ...paper.sections.flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'heading' ? [block.text] : block.kind === 'table' ? [block.caption] : [])))]);
    pages.forEach((page, index) => {
      const body = linesOf(page);
      expect(titles.has(body.at(-1) ?? ''), `page ${index + 1}`).toBe(false);
      if (index < pages.length - 1) expect(body.length, `page ${index + 1}`).toBeGreaterThan(6);
    });
  });

  it('leaves no page half empty but where a picture or a page of its own follows', () => {
    const height = PAPER[format].height;
    const own = new Set([1, ...paper.sections.filter(({ ownPage }) => ownPage === true).map(({ title }) => pagesOf(pdf).findIndex((page) => page.includes(` ${title}`)))]);
    bodiesOf(pdf).slice(0, -1).forEach((last, index) => { if (!own.has(index + 1)) expect((last - 66) / (height - 140), `page ${index + 1}`).toBeGreaterThan(0.4); });
  });

  it('is no longer than somebody reads before signing it, with every answer on it', () => { expect(pagesOf(pdf).length).toBeLessThanOrEqual(27); });

  it('says where the log of the school ended', () => { expect(flat(pagesOf(pdf).join(' '))).toContain(`entry 412 ${'5e5e5e5e '.repeat(8).trim()}`); });

  it('has nothing smaller than nine points', () => {
    const sizes = Array.from(runTool('pdftohtml', ['-xml', '-stdout', '-zoom', '1', asFile(pdf)]).text.matchAll(/<fontspec id="\d+" size="(\d+)"/g), ([, size]) => Number(size));
    expect(sizes.length).toBeGreaterThan(4);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(9);
  });
});

/** How far down each page something stands above its foot, points from the top. */
function bodiesOf(pdf: Uint8Array): readonly number[] {
  const pages = runTool('pdftotext', ['-bbox', asFile(pdf), '-']).text.split('<page ').slice(1);
  return pages.map((page) => {
    const height = Number(/height="([\d.]+)"/.exec(page)?.[1]);
    return Math.max(...Array.from(page.matchAll(/yMax="([\d.]+)"/g), ([, bottom]) => Number(bottom)).filter((bottom) => bottom < height - 70));
  });
}

describe('the file of an assessment', () => {
  it('prints names of any script, and the numbers of letters that no font has', async () => {
    const names = ['Ольга Шевченко', 'Γιώργος Νικολάου', 'ליאור', '王小明', '김민수', 'Zoë Łukasiewicz-Ńć', '\u{20BB7}田', 'ꦱꦸꦂꦪ'];
    const paper = assessmentPaper({ ...base, actions: names.map((what) => ({ what, owner: 'Å. Ł.', due: 'soon', state: 'open', note: '', control: null })) });
    const text = flat(textOf(await render(writableModel({ ...paper, cover: [], sections: paper.sections.filter(({ id }) => id === 'actions') }))));
    // A text that runs from right to left comes with marks of its direction.
    for (const name of names) expect(text.replace(/[\u202a-\u202e\u2066-\u2069]/g, '')).toContain(name.replace('\u{20BB7}', '[U+20BB7]'));
    const arabic = textOf(await render({ ...paper, cover: [], sections: [{ id: 'a', title: 'Arabic', blocks: [{ kind: 'text', text: 'ليلى حداد' }] }] }));
    expect(arabic.normalize('NFKC')).toContain('ليلى');
  }, 120_000);

  it('loses no word of a text that is longer than a page', async () => {
    const said = Array.from({ length: 500 }, (_, index) => `hiss${index}`);
    const paper = assessmentPaper({ ...base, incidents: [{ number: '1', when: 'in May', what: said.join(' '), done: said.join(' '), state: 'closed' }], comments: [{ by: 'R. O.', on: 'in June', text: said.join(' ') }] });
    const text = flat(pagesOf(await render({ ...paper, cover: [], sections: paper.sections.filter(({ id }) => id === 'incidents' || id === 'scope') })).flatMap(linesOf).join(' '));
    for (const word of said) expect(` ${text} `.split(` ${word} `).length - 1, word).toBe(3);
  }, 120_000);

  it('has the same bytes for the same facts', async () => {
    const small = { ...assessmentPaper(base), sections: assessmentPaper(base).sections.slice(0, 4) };
    expect(Buffer.from(await render(small)).equals(Buffer.from(await render(structuredClone(small))))).toBe(true);
  }, 120_000);
});

import { beforeAll, describe, expect, it } from 'vitest';
import { briefingSheet } from '@/lib/papers/briefing-sheet';
import type { EventFacts } from '@/lib/papers/event/facts';
import { eventPaper } from '@/lib/papers/event-paper';
import { packList } from '@/lib/papers/pack-list';
import type { Paper } from '@/lib/papers/paper';
import { responseCard } from '@/lib/papers/response-card';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { PAPER } from '@/lib/pdf/render/paper-size';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { signatureRectangle } from '@/lib/pdf/render/signature-geometry';
import { VENUE_CAUTION } from '@/lib/wording/caution';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';
import { eventFacts, packFacts, wordsOfPlace } from '../../support/event-facts';

const render = (paper: Paper): Promise<Uint8Array> => renderPaper(<PaperOfBlocks paper={paper} />);
const pagesOf = (pdf: Uint8Array): readonly string[] => textOf(pdf, '-layout').split('\f').slice(0, -1);
/** As it is read, without the breaks of its lines. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const times = (text: string, part: string): number => text.split(part).length - 1;
const sizesOf = (pdf: Uint8Array): readonly number[] => Array.from(runTool('pdftohtml', ['-xml', '-stdout', '-zoom', '1', asFile(pdf)]).text.matchAll(/<fontspec id="\d+" size="(\d+)"/g), ([, size]) => Number(size));

/** The longest that the forms let somebody type. */
const long = (letters: number): string => 'Behind the bicycle stand at the northern gate near the yard '.repeat(9).slice(0, letters - 1).trim();

/** An event of which everything was typed to the last letter its forms allow. */
function longest(format: Paper['format']): EventFacts {
  const base = eventFacts();
  const site = { ...base.site, name: long(100), address: long(200), meetingPlace: long(200), secondMeetingPlace: long(200), caretaker: long(100), caretakerPhone: '555 0120 555 0120 555 0120 55', emergencyNumber: '555 0112 555 0112 555 0112 55' };
  const checks = base.checks.map((line) => ({ ...line, accepted: line.accepted === null ? null : { ...line.accepted, reason: long(300) } }));
  return eventFacts({
    format, site, checks, guidance: wordsOfPlace(site, '555 0102 555 0102 555 0102 55'), title: long(120), school: { name: long(100), address: long(200), officerPhone: '555 0102 555 0102 555 0102 55' },
    adults: Array.from({ length: 6 }, (_, index) => ({ name: `${long(76)} ${index}`, parts: ['leads', 'may stop the match', 'first aid', 'drives'], phone: '555 0101 555 0101 555 0101 55', mayStop: true, firstAid: true })),
  });
}

describe.each(['A4', 'LETTER'] as const)('the papers of an event on %s', (format) => {
  const facts = eventFacts({ format, packs: packFacts(40) });
  const paper = eventPaper(facts);
  let pdf: Uint8Array = new Uint8Array();
  beforeAll(async () => { pdf = await render(paper); }, 120_000);

  it('name every pack, risk, condition, line of the check, adult and signer where it belongs, once', () => {
    const all = flat(pagesOf(pdf).join(' '));
    const section = (title: string, next: string): string => all.slice(all.indexOf(title), all.indexOf(next));
    for (const { label } of facts.packs) expect(times(all, label), label).toBe(1);
    for (const { title } of facts.assessment?.risks ?? []) expect(times(all, title), title).toBe(1);
    for (const { words } of [...facts.provides, ...facts.brings]) expect(times(all, words), words).toBe(1);
    const check = section('8 Check before it leaves', '9 What comes before');
    for (const { words } of facts.checks) expect(times(check, words), words).toBe(1);
    const adults = section('Responsible adults', 'Venue and school');
    for (const { name } of facts.adults) expect(times(adults, name), name).toBe(1);
    const cover = flat(pagesOf(pdf)[0] ?? '');
    for (const { title, name } of paper.signatures) expect(times(cover, `${title}: ${name}`), name).toBe(1);
    for (const { name } of facts.site.areas) expect(all, name).toContain(name);
  });

  it('defer on every page to fire code, fire service and both safety officers, with number and page', () => {
    const pages = pagesOf(pdf);
    pages.forEach((page, index) => { for (const words of [VENUE_CAUTION, facts.number, facts.fingerprint, `page ${index + 1} of ${pages.length}`]) expect(page).toContain(words); });
  });

  it('lead to the page with the same words from the first page, by words and by a link', async () => {
    for (const one of [{ ...paper, sections: [] }, responseCard(facts), packList(facts), briefingSheet(facts)]) {
      const made = await render(one);
      expect(flat(pagesOf(made)[0] ?? '')).toContain(one.twinAt);
      expect(runTool('qpdf', ['--qdf', '--object-streams=disable', asFile(made), '-']).text).toContain(`/URI (${one.twinAt ?? ''})`);
    }
  }, 120_000);

  it('leave no heading alone at the foot of a page, no page nearly empty, and nothing below nine points', () => {
    const pages = pagesOf(pdf);
    const titles = new Set(paper.sections.flatMap(({ title, blocks }, index) => [`${index + 1} ${title}`, ...blocks.flatMap((block) => (block.kind === 'heading' ? [block.text] : block.kind === 'table' ? [block.caption] : []))]));
    pages.forEach((page, index) => {
      const body = page.split('\n').map((line) => line.trim()).filter((line) => line !== '').slice(1, -2);
      expect(titles.has(body.at(-1) ?? ''), `page ${index + 1} ends with ${body.at(-1)}`).toBe(false);
      if (index < pages.length - 1) expect(body.length, `page ${index + 1}`).toBeGreaterThan(6);
    });
    for (const size of sizesOf(pdf)) expect(size).toBeGreaterThanOrEqual(9);
  });

  it('hang on the wall as one page, whatever was typed', async () => {
    const nothingKnown = { ...facts, site: { ...facts.site, emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null } };
    for (const one of [facts, longest(format), { ...nothingKnown, guidance: wordsOfPlace(nothingKnown.site, '') }]) {
      for (const sheet of [responseCard(one), briefingSheet(one)]) {
        const made = await render(sheet);
        expect(pagesOf(made), sheet.kind).toHaveLength(1);
        for (const size of sizesOf(made)) expect(size, sheet.kind).toBeGreaterThanOrEqual(9);
      }
    }
  }, 120_000);

  it('are one page of response and of briefing at every length in between', async () => {
    for (const letters of [30, 70, 100, 140, 170]) {
      const site = { ...facts.site, address: long(letters), meetingPlace: long(letters), secondMeetingPlace: long(letters) };
      for (const make of [responseCard, briefingSheet]) expect(pagesOf(await render(make({ ...facts, site, guidance: wordsOfPlace(site, '555 0102') }))), `${letters} letters`).toHaveLength(1);
    }
  }, 120_000);

  it('keep the cover on one page and both places for signatures free, whatever was typed', async () => {
    const file = eventPaper(longest(format));
    const made = await render({ ...file, sections: file.sections.slice(0, 1) });
    const pages = pagesOf(made);
    expect(pages[1]).toContain('1 Who answers, and whom to call');
    const found = runTool('pdftotext', ['-bbox', '-f', '1', '-l', '1', asFile(made), '-']).text.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</g);
    const inside = Array.from(found).filter(([, left, top, right, bottom]) => (['Preparer', 'Officer'] as const).some((role) => {
      const [x0, y0, x1, y1] = signatureRectangle(format, role);
      return Number(right) > x0 && Number(left) < x1 && PAPER[format].height - Number(bottom) < y1 && PAPER[format].height - Number(top) > y0;
    }));
    expect(inside.map(([, , , , , word]) => word)).toEqual([]);
  }, 120_000);
});

describe('the papers of an event', () => {
  it('have the same bytes for the same facts', async () => {
    for (const make of [responseCard, packList, briefingSheet]) expect(Buffer.from(await render(make(eventFacts()))).equals(Buffer.from(await render(structuredClone(make(eventFacts())))))).toBe(true);
    const small = { ...eventPaper(eventFacts()), sections: eventPaper(eventFacts()).sections.slice(0, 3) };
    expect(Buffer.from(await render(small)).equals(Buffer.from(await render(structuredClone(small))))).toBe(true);
  }, 120_000);
});

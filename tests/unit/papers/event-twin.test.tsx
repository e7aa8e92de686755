import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { briefingSheet } from '@/lib/papers/briefing-sheet';
import { eventPaper } from '@/lib/papers/event-paper';
import { packList } from '@/lib/papers/pack-list';
import { type Paper, wordsOf } from '@/lib/papers/paper';
import { responseCard } from '@/lib/papers/response-card';
import { eventFacts } from '../../support/event-facts';

const facts = eventFacts();
const ENTITIES: Readonly<Record<string, string>> = { '&quot;': '"', '&#x27;': '\'', '&amp;': '&', '&lt;': '<', '&gt;': '>' };
/** As it is read out: without tags, and with the characters that they stand for. */
const readOut = (paper: Paper): string => renderToStaticMarkup(<PaperSheet paper={paper} label={paper.title} />).replace(/<[^>]+>/g, ' ').replace(/&(quot|#x27|amp|lt|gt);/g, (entity) => ENTITIES[entity] ?? '').replace(/\s+/g, ' ');

describe.each([eventPaper(facts), responseCard(facts), packList(facts), briefingSheet(facts)].map((paper) => [paper.kind, paper] as const))('the page beside the %s', (_, paper) => {
  it('says every word of the paper, for those who cannot see the file', () => {
    const page = readOut(paper);
    for (const words of wordsOf(paper)) expect(page).toContain(words.replace(/\s+/g, ' ').trim());
    expect(page).toContain(paper.caution);
    expect(page).toContain(paper.number);
  });

  it('has one heading above all others, and no picture that speaks without words beside it', () => {
    const markup = renderToStaticMarkup(<PaperSheet paper={paper} label={paper.title} />);
    expect(markup.match(/<h2/g)).toHaveLength(1);
    for (const svg of markup.match(/<svg class="chart[^>]*>/g) ?? []) expect(svg).toMatch(/aria-hidden="true"|role="img" aria-label="[^"]+"/);
  });
});

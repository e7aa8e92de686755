import { describe, expect, it } from 'vitest';
import { eventPaper } from '@/lib/papers/event-paper';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { type Paper, text } from '@/lib/papers/paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { dialledParts } from '@/lib/pdf/render/dialled';
import { fontsForDialling } from '@/lib/pdf/render/fonts/fonts-for-words';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { assessmentFacts } from '@/tests/support/assessment-facts';
import { eventFacts } from '@/tests/support/event-facts';
import { exampleDocument } from '@/tests/support/version-for-tests';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';

const numbersIn = (words: string, ...numbers: string[]) => dialledParts(words, numbers).flatMap((part) => (part.dialled ? [part.text] : []));
const fontsOf = (pdf: Uint8Array): string => runTool('pdffonts', [asFile(pdf)]).text;

describe('a telephone number on paper', () => {
  it('is found wherever it stands, whole, and nothing is lost around it', () => {
    const words = 'Caretaker: +44 (0)20 7946 0101. Call 000, then 020 7946.';
    expect(numbersIn(words, '000', '020 7946', '+44 (0)20 7946 0101')).toEqual(['+44 (0)20 7946 0101', '000', '020 7946']);
    expect(dialledParts(words, ['000', '+44 (0)20 7946 0101']).map((part) => part.text).join('')).toBe(words);
    expect(dialledParts('', ['000'])).toEqual([{ text: '', dialled: false }]);
  });

  it('is not found in a longer number or in a figure, and one without a zero needs no other font', () => {
    expect(numbersIn('1000 mAh, 0.110 V, 110.5 °C, 3,110 draws', '000', '110')).toEqual([]);
    expect(numbersIn('Call 999 or 112', '999', '112')).toEqual([]);
  });

  it('is set in the font with a plain zero; a note beside it that this font has not, like other words', () => {
    expect(fontsForDialling('+44 20 7946 0101').map(({ families }) => families[0])).toEqual(['DejaVu Sans']);
    expect(fontsForDialling('0101 王').map(({ families }) => families[0])).toEqual(['Atkinson Hyperlegible Next', 'Unifont']);
  });

  it('alone brings that font into a file, and its text is read as before', async () => {
    const { sections: [section], ...head } = eventPaper(eventFacts());
    const paper = (words: string): Paper => ({ ...head, title: 'Paper', subtitle: '', caution: 'None', cover: [text(words)], sections: [], signatures: [], dialled: ['000', '020 7946 0101'] });
    const [without, beside] = [await renderPaper(<PaperOfBlocks paper={paper('100 packs, 2026')} />), await renderPaper(<PaperOfBlocks paper={paper('Call 000, or 020 7946 0101 by day.')} />)];
    expect(section).toBeDefined();
    expect(fontsOf(without)).not.toContain('DejaVu');
    expect(fontsOf(beside)).toContain('DejaVu');
    expect(textOf(beside)).toContain('Call 000, or 020 7946 0101 by day.');
  });

  it('is told to the paper by everything that has one: people, caretaker, fire call, and the answers', () => {
    const event = eventFacts();
    const written = [event.site.emergencyNumber, event.site.caretakerPhone, event.school.officerPhone, event.preparer.telephone, event.officer.telephone, ...event.adults.map(({ phone }) => phone)].filter((number) => number !== null);
    expect(eventPaper(event).dialled).toEqual(expect.arrayContaining(written));
    const assessment = assessmentFacts(exampleDocument('ordinary-classroom'));
    expect(assessmentPaper(assessment).dialled).toEqual(expect.arrayContaining([assessment.preparer.telephone, assessment.officer.telephone]));
  });
});

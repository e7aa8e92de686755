import type { EventFacts } from './event/facts';
import { guidanceOf } from './event/guidance-blocks';
import { eventPaperHead } from './event/head';
import { beforeSmoke, smokeSteps } from './event/response';
import { said } from './event/said';
import { type Block, type Paper, type StepSize, text } from './paper';

/** One page to hang up where people leave: what to do at smoke, in large letters with a drawing for each step. */
export function responseCard(facts: EventFacts): Paper {
  const [smoke] = guidanceOf(facts, ['smoke']);
  return {
    ...eventPaperHead(facts, 'response card'),
    title: smoke?.title ?? 'If something happens',
    subtitle: `${facts.site.name}. ${facts.school.name}.`,
    cover: [...before(facts), ...smokeSteps(facts, sizeOf(facts)), ...afterwards(facts)],
    sections: [], signatures: [],
  };
}

function before(facts: EventFacts): readonly Block[] {
  const found = beforeSmoke(facts);
  return found === null ? [] : [text(`${found.title}: ${found.text}`, 'presses')];
}

/** Letters that a school filled in for which the steps are still that large. Tried out: a test holds them to one page. */
const LETTERS: Readonly<Record<Paper['format'], readonly (readonly [StepSize, number])[]>> = {
  A4: [['huge', 230], ['large', 380], ['plain', 720]],
  LETTER: [['huge', 120], ['large', 260], ['plain', 520]],
};

/** As large as the page allows: a long address is set smaller rather than carried to a second page. */
function sizeOf({ guidance, site, school, format }: EventFacts): StepSize {
  const words = [guidance.number, guidance.meetingPoint, guidance.secondMeetingPoint, guidance.siteAddress].map((field) => field.words);
  const letters = [...words, site.name, school.name].reduce((sum, { length }) => sum + length, 0);
  return LETTERS[format].find(([, most]) => letters <= most)?.[0] ?? 'small';
}

/** Texts and how many of their leads speak without the rest. */
const AFTERWARDS: readonly (readonly [string, number])[] = [['somebody-missing', 3], ['first-aid', 2], ['swollen-cool', 3]];

/** What comes next in a few words: the leads of their texts. */
function afterwards(facts: EventFacts): readonly Block[] {
  const items = guidanceOf(facts, AFTERWARDS.map(([id]) => id)).map(({ title, lines }, index) => ({ lead: `${title}.`, text: lines.slice(0, AFTERWARDS[index]?.[1]).map(({ lead }) => lead).join(' ') }));
  const telephones = [`Caretaker: ${said(facts.site.caretakerPhone)}`, `Safety officer: ${said(facts.school.officerPhone)}`].join('. ');
  return [{ kind: 'list', small: true, items: [...items, ...sand(facts), { lead: `${telephones}.` }] }];
}

/** Beside our mark, which shows a bucket, it is said what sand is for. */
function sand(facts: EventFacts): readonly { readonly lead: string }[] {
  return guidanceOf(facts, ['sand']).map(({ title }) => ({ lead: title }));
}

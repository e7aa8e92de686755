import type { EventFacts } from './event/facts';
import { guidanceOf } from './event/guidance-blocks';
import { eventPaperHead } from './event/head';
import { type Cell, type Paper, text } from './paper';

/** What everybody keeps to, by the titles of the edition's controls. */
const ALWAYS = ['named-handlers', 'adult-present', 'no-charge-elsewhere', 'carry-case', 'solder-rule', 'arm-rule', 'eye-protection'] as const;
/** Texts for everybody that may stand beside one another; at an alarm nobody reads, so these are the leads alone. */
const TEXTS = ['plugs', 'after-crash', 'swollen-cool', 'hot-no-smoke'] as const;

/** Places for initials on one sheet. */
const PLACES = 32;

/** What every student knows about packs, on one page, signed with initials: no student's name stands on a paper. */
export function briefingSheet(facts: EventFacts): Paper {
  return {
    ...eventPaperHead(facts, 'briefing'),
    title: 'Packs: what everybody knows',
    subtitle: `${facts.title}. ${facts.when}. ${facts.school.name}.`,
    cover: [
      { kind: 'table', caption: 'An adult reads it aloud, and everybody may ask', columns: [{ head: 'When', width: 2.4 }, { head: 'What you do', width: 8 }], rows: rowsOf(facts), empty: '' },
      text('You may say stop at any time. Nobody is blamed for a false alarm.', 'strong'),
      { kind: 'initials', caption: `It was read to me, and I have asked what I did not understand. Initials only, no names. More than ${PLACES} people: a second sheet.`, places: PLACES },
    ],
    sections: [], signatures: [],
  };
}

function rowsOf(facts: EventFacts): readonly (readonly Cell[])[] {
  const always = ALWAYS.flatMap((id) => facts.content.controls.filter((control) => control.id === id)).map(({ title }) => `${title}.`).join(' ');
  return [['Always', always], ...guidanceOf(facts, TEXTS).map(({ id, title, lines }) => [id === 'hot-no-smoke' ? { text: title, under: 'and just so at smoke, hiss or flame' } : title, lines.map(({ lead }) => lead).join(' ')])];
}

import type { EventFacts } from './event/facts';
import { guidanceOf } from './event/guidance-blocks';
import { eventPaperHead } from './event/head';
import { type Cell, type Paper, text } from './paper';

/** What everybody keeps to, by the titles of the edition's controls. */
const ALWAYS = ['named-handlers', 'adult-present', 'no-charge-elsewhere', 'carry-case', 'solder-rule', 'arm-rule', 'eye-protection'] as const;
/**
 * Texts for everybody that may stand beside one another: how many of their lines are a student's affair (the rest is for
 * a trained adult), and whether the leads speak without what follows them.
 */
const TEXTS: readonly { readonly id: string; readonly lines: number; readonly leadsAlone: boolean }[] = [
  { id: 'plugs', lines: 3, leadsAlone: false }, { id: 'after-crash', lines: 3, leadsAlone: false },
  { id: 'swollen-cool', lines: 5, leadsAlone: true }, { id: 'hot-no-smoke', lines: 6, leadsAlone: true },
];

const PLACES: Readonly<Record<Paper['format'], { readonly usual: number; readonly least: number }>> = { A4: { usual: 36, least: 18 }, LETTER: { usual: 30, least: 18 } };

/** Places for initials on one sheet; fewer where number, meeting point and title are long, so that it stays one page. */
function placesOn({ title, school, guidance, format }: EventFacts): number {
  // The number stands three times on it.
  const letters = [title, school.name, ...Array<string>(3).fill(guidance.number.words), guidance.meetingPoint.words].reduce((sum, { length }) => sum + length, 0);
  const { usual, least } = PLACES[format];
  return letters <= 180 ? usual : least;
}

/** What every student knows about packs, on one page, signed with initials: no student's name stands on a paper. */
export function briefingSheet(facts: EventFacts): Paper {
  const places = placesOn(facts);
  return {
    ...eventPaperHead(facts, 'briefing'),
    title: 'Packs: what everybody knows',
    subtitle: `${facts.title}. ${facts.when}. ${facts.school.name}.`,
    cover: [
      { kind: 'table', caption: 'An adult reads it aloud, and everybody may ask', columns: [{ head: 'When', width: 1.9 }, { head: 'What you do', width: 8 }], rows: rowsOf(facts), empty: '' },
      text('You may say stop at any time. Nobody is blamed for a false alarm.', 'strong'),
      { kind: 'initials', caption: `It was read to me, and I have asked what I did not understand. Initials only, no names. More than ${places} people: a second sheet.`, places },
    ],
    sections: [], signatures: [],
  };
}

function rowsOf(facts: EventFacts): readonly (readonly Cell[])[] {
  const always = ALWAYS.flatMap((id) => facts.content.controls.filter((control) => control.id === id)).map(({ title }) => `${title}.`).join(' ');
  const told = guidanceOf(facts, TEXTS.map(({ id }) => id)).map(({ id, title, lines }) => {
    const how = TEXTS.find((one) => one.id === id);
    const words = lines.slice(0, how?.lines).map(({ lead, text: rest }) => (how?.leadsAlone === true || rest === undefined ? lead : `${lead} ${rest}`));
    return [id === 'hot-no-smoke' ? { text: title, under: 'and just so at smoke, hiss or flame' } : title, words.join(' ')];
  });
  return [['Always', always], ...told];
}

import { type Block, type PaperSection, text } from '../paper';
import type { EventFacts } from './facts';
import { NOT_FILLED_IN, said } from './said';

/** Who answers for what, whom to call, who may stop the match, and the hours of the day. */
export function contactSection(facts: EventFacts): PaperSection {
  return { id: 'contacts', title: 'Who answers, and whom to call', ownPage: true, blocks: [mayStop(facts), firstAid(facts), adultTable(facts), otherTable(facts), schedule(facts), text('Adults only: no student is named on this paper. The list goes no further than those who need it on the day.', 'quiet')] };
}

function mayStop({ adults }: EventFacts): Block {
  return adults.some((adult) => adult.mayStop)
    ? text('Whoever is marked STOP may stop the match at any time, without asking anybody. So may the venue and the fire service.', 'strong')
    : text(`May stop the match at any time: ${NOT_FILLED_IN}. Until somebody is named, the venue and the fire service may.`, 'presses');
}

function firstAid({ adults }: EventFacts): Block {
  const count = adults.filter((adult) => adult.firstAid).length;
  return count === 0 ? text('First aid: nobody is named. Everybody has to know that, and that the first act is to call.', 'presses') : text(`First aid: ${count === 1 ? 'one adult is' : `${count} adults are`} named below.`);
}

function adultTable({ adults }: EventFacts): Block {
  return {
    kind: 'table', caption: 'Responsible adults', columns: [{ head: 'Name', width: 4 }, { head: 'Part', width: 5 }, { head: 'Telephone', width: 3 }],
    rows: adults.map(({ name, parts, phone, mayStop: stops }) => [name, { text: parts.join(', '), under: stops ? 'STOP: may stop the match' : '' }, said(phone)]),
    empty: `${NOT_FILLED_IN}: no adult is named.`,
  };
}

function otherTable({ site, school, preparer, officer }: EventFacts): Block {
  return {
    kind: 'table', caption: 'Venue and school', columns: [{ head: 'Who', width: 4 }, { head: 'Name', width: 5 }, { head: 'Telephone', width: 3 }],
    rows: [
      ['Fire service', '', said(site.emergencyNumber)],
      ['Caretaker or key holder of the venue', said(site.caretaker), said(site.caretakerPhone)],
      ['School, prepared this file', { text: preparer.name, under: [preparer.post, school.name].filter((words) => words !== '').join(', ') }, said(preparer.telephone)],
      ['School, safety officer', { text: officer.name, under: [officer.post, school.name].filter((words) => words !== '').join(', ') }, said(school.officerPhone ?? officer.telephone)],
    ],
    empty: '',
  };
}

function schedule({ schedule: lines }: EventFacts): Block {
  return { kind: 'table', caption: 'The day', columns: [{ head: 'Time', width: 2 }, { head: 'What', width: 9 }], rows: lines.map(({ time, what }) => [time, what]), empty: `${NOT_FILLED_IN}: no schedule was written.` };
}

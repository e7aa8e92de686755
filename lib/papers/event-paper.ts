import { checkSection } from './event/check';
import { cautionSection } from './event/cautions';
import { conditionSection } from './event/conditions';
import { contactSection } from './event/contacts';
import { coverBlocks } from './event/cover';
import type { EventFacts } from './event/facts';
import { eventPaperHead } from './event/head';
import { packSection } from './event/packs';
import { responseSections } from './event/response';
import { riskSection } from './event/risks';
import { roomSection } from './event/room';
import { routineSection } from './event/routine';
import { travelSection } from './event/travel';
import type { Paper } from './paper';

/**
 * The file that a venue is handed for one date and place: who answers, what remains, the room, what each side brings,
 * the packs, how they come and go, what was checked, and what is done when something happens.
 * @param facts complete; nothing is looked up, so the same facts give the same paper
 */
export function eventPaper(facts: EventFacts): Paper {
  const { preparer, officer, site, school, title, when } = facts;
  return {
    ...eventPaperHead(facts, 'event'),
    title: 'File for the venue',
    subtitle: `${title}. ${site.name}. ${when}. ${school.name}.`,
    cover: coverBlocks(facts),
    sections: [
      contactSection(facts), riskSection(facts), roomSection(facts), conditionSection(facts), packSection(facts), routineSection(facts),
      travelSection(facts), checkSection(facts), cautionSection(facts), ...responseSections(facts),
    ],
    signatures: [
      { field: 'Preparer', title: 'Prepared by', name: preparer.name, post: preparer.post },
      { field: 'Officer', title: 'Checked and signed by', name: officer.name, post: officer.post },
    ],
  };
}

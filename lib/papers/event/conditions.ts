import { type PaperSection, text } from '../paper';
import type { EventFacts } from './facts';
import { guidanceBlocks } from './guidance-blocks';
import { conditionsTable } from './said';

/** What the venue must meet and what the team brings, each agreed or still open. */
export function conditionSection(facts: EventFacts): PaperSection {
  const open = [...facts.provides, ...facts.brings].filter(({ agreed }) => !agreed).length;
  return { id: 'conditions', title: 'Conditions', blocks: [
    text(open === 0 ? 'All of it is agreed.' : `${open === 1 ? 'One condition is' : `${open} conditions are`} still OPEN: asked for, and nobody has agreed yet.`, open === 0 ? 'plain' : 'presses'),
    conditionsTable('The venue provides', facts.provides, 'Nothing was asked of the venue.'),
    conditionsTable('The team brings', facts.brings, 'Nothing was written down.'),
    ...guidanceBlocks(facts, ['spectators', 'first-aiders']),
  ] };
}

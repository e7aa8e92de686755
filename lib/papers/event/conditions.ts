import { type PaperSection, text } from '../paper';
import type { EventFacts } from './facts';
import { guidanceBlocks } from './guidance-blocks';
import { conditionsTable } from './said';

/** What the venue must meet and what the team brings, and how far each stands. */
export function conditionSection(facts: EventFacts): PaperSection {
  const open = [...facts.provides, ...facts.brings].filter(({ stands }) => !stands).length;
  return { id: 'conditions', title: 'Conditions', blocks: [
    text(facts.site.kind === 'own' ? ownWords(open) : agreedWords(open), open === 0 ? 'plain' : 'presses'),
    conditionsTable('The venue provides', facts.provides, 'Nothing was asked of the venue.'),
    conditionsTable('The team brings', facts.brings, 'Nothing was written down.'),
    ...guidanceBlocks(facts, ['spectators', 'first-aiders']),
  ] };
}

const counted = (open: number): string => (open === 1 ? 'One condition is' : `${open} conditions are`);

function agreedWords(open: number): string {
  return open === 0 ? 'All of it is agreed.' : `${counted(open)} still OPEN: asked for, and nobody has agreed yet.`;
}

/** Nobody asks a school for its own hall: what is there was answered in the assessment. */
function ownWords(open: number): string {
  return open === 0 ? 'All of it is in place, as the signed assessment of our own hall says.' : `${counted(open)} not wholly in place, as the signed assessment of our own hall says. Look there for what is done about it.`;
}

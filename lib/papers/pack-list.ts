import type { EventFacts } from './event/facts';
import { eventPaperHead } from './event/head';
import { packBlocks } from './event/packs';
import { linesOf } from './event/said';
import { type Paper, text } from './paper';

/** The packs that travel by themselves: what a driver, a carrier or a venue's door asks for. */
export function packList(facts: EventFacts): Paper {
  const { title, site, school, when, travel } = facts;
  return {
    ...eventPaperHead(facts, 'pack list'),
    title: 'Packs that travel',
    subtitle: `${title}. ${site.name}. ${when}. ${school.name}.`,
    cover: [...packBlocks(facts), ...(travel.byRoad ? [linesOf(travel.road)] : []), ...(travel.byAir ? [linesOf(travel.air), text('Ask the carrier: its own rules, and those of every country on the way, come first.', 'strong')] : [])],
    sections: [], signatures: [],
  };
}

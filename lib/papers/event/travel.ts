import { type Block, heading, type PaperSection, text } from '../paper';
import type { EventFacts } from './facts';
import { guidanceBlocks } from './guidance-blocks';
import { linesOf } from './said';

/** How packs come and go, where they are at night, and what becomes of a damaged one. */
export function travelSection(facts: EventFacts): PaperSection {
  const { travel, night, damaged } = facts;
  return { id: 'travel', title: 'The way there and back, the night, a damaged pack', blocks: [
    ...(travel.byRoad ? byRoad(facts) : []), ...(travel.byAir ? byAir(facts) : []),
    ...(travel.byRoad || travel.byAir ? [] : [text('Nothing travels: the packs are at the place already, or nobody said how they come.')]),
    ...named('Overnight', night), ...named('A damaged pack at the venue', damaged),
    ...guidanceBlocks(facts, ['dispose-damaged']),
  ] };
}

const named = (title: string, lines: EventFacts['night']): readonly Block[] => (lines.length === 0 ? [] : [heading(title), linesOf(lines)]);

function byRoad(facts: EventFacts): readonly Block[] {
  return [...named('By road', facts.travel.road), ...guidanceBlocks(facts, ['travel-road', 'vehicle-smoke'])];
}

function byAir(facts: EventFacts): readonly Block[] {
  const { air, airRules } = facts.travel;
  return [
    ...named('By air', air),
    { kind: 'table', caption: 'Rules it was held to', columns: [{ head: 'Rule', width: 6 }, { head: 'Source', width: 4 }, { head: 'Known from', width: 2 }], rows: airRules.map(({ rule, source, read }) => [rule, source, read]), empty: 'None was named.' },
    text('Ask the carrier: its own rules, and those of every country on the way, come first.', 'strong'),
    ...guidanceBlocks(facts, ['travel-air-flight']),
  ];
}

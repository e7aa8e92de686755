import { heading, type PaperSection, text } from '../paper';
import type { EventFacts } from './facts';
import { controlList, guidanceBlocks } from './guidance-blocks';
import { linesOf } from './said';

/** What good looks like before and while packs charge, by the controls of the edition. */
const CHARGING = ['adult-present', 'named-handlers', 'pre-charge-check', 'cool-down-rest', 'settings-read-back', 'gentle-rate', 'no-parallel', 'clear-space-charging', 'attended-charging'] as const;
const CLOSING = ['storage-charge', 'pack-count', 'leads-covered', 'no-damaged-travel'] as const;

/** How packs are charged there, by whom, and how the day is closed. */
export function routineSection(facts: EventFacts): PaperSection {
  return { id: 'routine', title: 'Charging and closing', blocks: [
    linesOf(facts.charging),
    heading('Charging'), controlList(facts, CHARGING, true),
    ...guidanceBlocks(facts, ['charging-alone']),
    heading('Closing'), controlList(facts, CLOSING, true),
    text('The adult who leads ticks it off on the day. What is not so is written down before anybody drives away.', 'quiet'),
  ] };
}

import { type Block, type PaperSection, text } from '../paper';
import { acceptedChecks, openChecks } from './cover';
import type { EventCheckFact, EventFacts } from './facts';
import { NOT_FILLED_IN } from './said';

const STATE: Readonly<Record<EventCheckFact['state'], string>> = { ok: 'in order', failing: 'NOT IN ORDER', 'not known': 'NOT KNOWN', accepted: 'accepted' };

/** Every line of the check before it leaves, group by group; an accepted one with its reason and who agreed. */
export function checkSection(facts: EventFacts): PaperSection {
  const groups = [...new Set(facts.checks.map(({ group }) => group))];
  return { id: 'check', title: 'Check before it leaves', blocks: [
    summary(facts),
    ...groups.map((group) => groupTable(group, facts.checks.filter((line) => line.group === group))),
    ...(groups.length === 0 ? [text(`The check: ${NOT_FILLED_IN}.`, 'presses')] : []),
  ] };
}

function summary(facts: EventFacts): Block {
  const [open, accepted] = [openChecks(facts).length, acceptedChecks(facts).length];
  return text(`${facts.checks.length} lines: ${facts.checks.length - open - accepted} in order, ${accepted} accepted in writing, ${open} open. As it stood when this was made, ${facts.madeOn}.`, open > 0 ? 'presses' : 'plain');
}

function groupTable(group: string, lines: readonly EventCheckFact[]): Block {
  return {
    kind: 'table', caption: group, columns: [{ head: 'Line', width: 8 }, { head: 'State', width: 2 }],
    rows: lines.map(({ words, state, accepted }) => [accepted === null ? words : { text: words, under: `Accepted by ${accepted.by}: ${accepted.reason}` }, STATE[state]]),
    empty: '',
  };
}

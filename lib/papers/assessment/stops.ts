import type { Block, PaperSection } from '../paper';
import { heading, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** Every stop condition with its state, how it is settled or was accepted, and which nobody may accept. */
export function stopSection(facts: AssessmentFacts): PaperSection {
  const holding = new Set(facts.result.stops.map((stop) => stop.id));
  const clear = facts.content.stops.filter((stop) => !holding.has(stop.id));
  const rows = facts.content.stops.filter((stop) => holding.has(stop.id)).map((stop) => {
    const accepted = facts.acceptances.find((one) => one.stop === stop.id);
    const how = accepted === undefined ? stop.settles : `${accepted.reason}${accepted.replacedBy === '' ? '' : ` Instead: ${accepted.replacedBy}`}${accepted.paper === null ? '' : ` Paper: ${accepted.paper}.`}${accepted.until === null ? '' : ` Ends ${accepted.until}.`}`;
    return [{ text: stop.title, under: acceptance(stop.acceptable?.kind) }, accepted === undefined ? 'HOLDS' : 'accepted', how];
  });
  const blocks: readonly Block[] = [
    text('A grade says how we rank what is left. A stop says do not start, whatever the grade.'),
    { kind: 'table', caption: 'Conditions that hold', columns: [{ head: 'Condition', width: 4 }, { head: 'State', width: 1.5 }, { head: 'What settles it', width: 6.5 }], rows, empty: 'None holds. That permits nothing by itself: the officer and local rules decide.' },
    heading('Clear, as answered'),
    clear.length === 0 ? text('None.') : { kind: 'list', small: true, columns: 2, items: clear.map((stop) => ({ lead: stop.title })) },
  ];
  return { id: 'stops', title: 'Stop conditions', blocks };
}

function acceptance(kind: 'never' | 'with-paper' | 'until' | undefined): string {
  if (kind === 'never') return 'nobody may accept it';
  if (kind === 'with-paper') return 'only with a paper of the authority';
  return kind === 'until' ? 'only until a date, with what replaces it' : 'the officer decides';
}

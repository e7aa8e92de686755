import type { Block, PaperSection } from '../paper';
import { text } from '../paper';
import type { AssessmentFacts } from './facts';

/** Every stop condition with its state, how it was settled or accepted, and which nobody may accept. */
export function stopSection(facts: AssessmentFacts): PaperSection {
  const holding = new Map(facts.result.stops.map((stop) => [stop.id, stop]));
  const rows = facts.content.stops.map((stop) => {
    const accepted = facts.acceptances.find((one) => one.stop === stop.id);
    const state = !holding.has(stop.id) ? 'clear' : accepted === undefined ? 'HOLDS' : 'accepted';
    const how = !holding.has(stop.id) ? 'as answered' : accepted === undefined ? stop.settles : `${accepted.reason} Instead: ${accepted.replacedBy}${accepted.until === null ? '' : ` Ends ${accepted.until}.`}`;
    return [{ text: stop.title, under: acceptance(stop.acceptable?.kind) }, state, how];
  });
  const blocks: readonly Block[] = [
    text('A grade says how we rank what is left. A stop says do not start, whatever the grade.'),
    { kind: 'table', caption: 'Stop conditions', columns: [{ head: 'Condition', width: 5 }, { head: 'State', width: 1.4 }, { head: 'Settled by', width: 5 }], rows, empty: 'This edition has no stop conditions.' },
  ];
  return { id: 'stops', title: 'Stop conditions', blocks };
}

function acceptance(kind: 'never' | 'with-paper' | 'until' | undefined): string {
  if (kind === 'never') return 'nobody may accept it';
  if (kind === 'with-paper') return 'only with a paper of the authority';
  return kind === 'until' ? 'only until a date, with what replaces it' : 'the officer decides';
}

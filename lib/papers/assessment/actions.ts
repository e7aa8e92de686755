import { hours } from '@/lib/wording/measures';
import { percent, percentRange } from '@/lib/wording/numbers';
import { searchWords } from '@/lib/wording/search';
import { type Block, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** What is to be done, by whom, by when; and what would take most harm away for the least effort. */
export function actionSection(facts: AssessmentFacts): PaperSection {
  return { id: 'actions', title: 'Actions', blocks: [agreed(facts), ...suggested(facts)] };
}

function agreed({ actions }: AssessmentFacts): Block {
  return {
    kind: 'table',
    caption: 'Agreed',
    columns: [{ head: 'What', width: 5 }, { head: 'Who', width: 2 }, { head: 'By', width: 1.8 }, { head: 'State', width: 1.2 }, { head: 'Note', width: 3 }],
    rows: actions.map((action) => [action.what, action.owner, action.due, action.state, action.note]),
    empty: 'No action has been agreed.',
  };
}

function suggested({ result, content }: AssessmentFacts): readonly Block[] {
  const { bestSet } = result;
  if (bestSet.controls.length === 0) return [text('By this model nothing that can be had for little effort would lower the harm.', 'quiet')];
  const control = (id: string) => content.controls.find((one) => one.id === id);
  return [
    text(`Within ${hours(bestSet.budget)} of effort (hours, and money counted in the same points) these take away most: ${percent(bestSet.cut)} of the harm, nine draws in ten ${percentRange(bestSet.cutInterval.p05, bestSet.cutInterval.p95)}, by this model, our judgement. ${searchWords(bestSet)}`.trimEnd()),
    { kind: 'list', items: bestSet.controls.map((id) => ({ lead: `${control(id)?.title ?? id}.`, text: control(id)?.goodLooksLike ?? '' })) },
  ];
}

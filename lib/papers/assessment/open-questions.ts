import { type Block, type PaperSection, text } from '../paper';
import type { AssessmentFacts, PaperAnswer } from './facts';

/** Everything nobody is sure of or has not said, on its own, with who will find out; and what was taken on trust. */
export function openQuestions(facts: AssessmentFacts): PaperSection {
  const of = (standing: PaperAnswer['standing']) => facts.answers.filter((answer) => answer.standing === standing);
  const unproved = of('answered').filter((answer) => answer.evidence === '');
  const open = (caption: string, rows: readonly PaperAnswer[], empty: string): Block => ({
    kind: 'table', caption, columns: [{ head: 'Question', width: 6 }, { head: 'Who finds out, by when', width: 3 }, { head: 'Note', width: 3 }],
    rows: rows.map((answer) => [answer.question, answer.toFindOut === '' ? 'nobody named' : answer.toFindOut, answer.note]), empty,
  });
  return {
    id: 'open', title: 'What is not known', blocks: [
      open('Not sure', of('not sure'), 'Every question was answered with certainty.'),
      open('Not answered', of('not answered'), 'No question was left out.'),
      assumed(facts),
      text(`${unproved.length} of ${of('answered').length} answers stand without a photo, a test or a paper; they are marked in the annex.`),
      text(facts.onTrust === '' ? 'Nothing was named as taken on trust.' : `Taken on trust: ${facts.onTrust}`),
    ],
  };
}

function assumed({ result }: AssessmentFacts): Block {
  return {
    kind: 'table', caption: 'Taken instead, on the cautious side', columns: [{ head: 'Figure', width: 5 }, { head: 'Taken', width: 2 }, { head: 'Because', width: 2 }],
    rows: result.assumedInputs.map((one) => [one.title, `${typeof one.value === 'number' ? Number(one.value.toPrecision(3)) : one.value} ${unit(one.unit)}`.trim(), one.because]), empty: 'No figure had to be assumed.',
  };
}

const unit = (words: string): string => (['word', '0 or 1', 'share', 'light, ordinary or heavy'].includes(words) ? '' : words);

import { type Block, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** What an officer asks to see a record of, by the questions that ask for it. */
const RECORDS: readonly { readonly caption: string; readonly questions: readonly string[] }[] = [
  { caption: 'Training', questions: ['people-trained', 'people-named', 'people-adult', 'people-kit'] },
  { caption: 'Drill, first aid, who needs help', questions: ['room-leave', 'response-ready', 'people-needs', 'people-help', 'people-breathing'] },
  { caption: 'Electricity', questions: ['electric-load', 'electric-circuit', 'electric-kit'] },
];

/** Whether a question is one that a record is asked for. */
export const isRecord = (question: string): boolean => RECORDS.some(({ questions }) => questions.includes(question));

/** Training, drill and electricity as they were answered, with what is on file: the note says who, when and where. */
export function recordSection({ answers }: AssessmentFacts): PaperSection {
  const blocks = RECORDS.map(({ caption, questions }): Block => ({
    kind: 'table', caption, columns: [{ head: 'Question', width: 3.4 }, { head: 'Answer', width: 6 }, { head: 'Record', width: 2.2 }],
    rows: answers.filter(({ id, standing }) => questions.includes(id) && standing === 'answered').map((answer) => [answer.question, answer.answer, { text: answer.note, under: answer.evidence === '' ? 'no record attached' : answer.evidence }]),
    empty: 'Nothing of this was answered.',
  }));
  return { id: 'records', title: 'Training, drill and electricity', blocks: [text('The record says by whom, when and where it is kept. Numbers and posts only: nobody’s name, age or illness stands here.', 'quiet'), ...blocks] };
}

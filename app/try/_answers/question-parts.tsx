import { QuestionHint as SharedHint } from '@/app/_components/questions/question-hint';
import type { PrefillSource, Question } from '@/lib/content/model';

/** What every kind of question gets from the page. */
export interface QuestionProps<Kind extends Question> {
  readonly question: Kind;
  readonly edit: EditAnswers;
}

/** How an answer is changed; `what` names the change for "Undo". */
export interface EditAnswers {
  readonly change: (change: (whole: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>, what: string) => void;
}

/** The id of a question's fieldset: a link can lead to it. */
export const questionAnchor = (id: string): string => `q-${id}`;

/** What "Undo" says about a changed answer. */
export const changeOf = (question: Question): string => `the answer to “${question.text}”`;

const RECORDS: Readonly<Record<PrefillSource, string>> = { site: 'the site', area: 'the rooms', packs: 'the packs', sessions: 'the sessions' };

/** Why it is asked and what good looks like; and that a school with records would not have to type this. */
export function QuestionHint({ question, goodInRow }: { readonly question: Question; readonly goodInRow?: boolean }) {
  return (
    <SharedHint question={question} goodInRow={goodInRow}>
      {question.prefilledFrom === undefined ? null : <><br /><b>From the school’s records, once there are any:</b> {question.prefilledFrom.map((source) => RECORDS[source]).join(' and ')}. You confirm it.</>}
    </SharedHint>
  );
}

/** Stands beside a question nobody has answered: silence is not a good answer. */
export function NotAnswered() {
  return <p className="small muted">Not answered: counts as not sure.</p>;
}

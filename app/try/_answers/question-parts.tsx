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

/** Why it is asked, what good looks like unless a row says it, and who or what knows the answer. */
export function QuestionHint({ question, goodInRow = false }: { readonly question: Question; readonly goodInRow?: boolean }) {
  return (
    <>
      {question.why}
      {goodInRow ? null : <><br /><b>What good looks like:</b> {question.good}</>}
      {question.keeper === true ? <><br /><b>For the building’s caretaker.</b></> : null}
      {question.prefilledFrom === undefined ? null : <><br /><b>From the school’s records, once there are any:</b> {question.prefilledFrom.map((source) => RECORDS[source]).join(' and ')}. You confirm it.</>}
    </>
  );
}

/** Stands beside a question nobody has answered: silence is not a good answer. */
export function NotAnswered() {
  return <p className="small muted">Not answered: counts as not sure.</p>;
}

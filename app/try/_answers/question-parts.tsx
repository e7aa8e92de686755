import type { Question } from '@/lib/content/model';

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

/** Why it is asked and, unless a row says it, what good looks like. */
export function QuestionHint({ question, goodInRow = false }: { readonly question: Question; readonly goodInRow?: boolean }) {
  return (
    <>
      {question.why}
      {goodInRow ? null : <><br /><b>What good looks like:</b> {question.good}</>}
    </>
  );
}

/** Stands beside a question nobody has answered: silence is not a good answer. */
export function NotAnswered() {
  return <p className="small muted">Not answered: counts as not sure.</p>;
}

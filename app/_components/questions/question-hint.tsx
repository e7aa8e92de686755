import type { ReactNode } from 'react';
import type { Question, TickLine } from '@/lib/content/model';

interface QuestionHintProps {
  readonly question: Question;
  /** a row of the answers says what good looks like */
  readonly goodInRow?: boolean;
  readonly children?: ReactNode;
}

/** Why it is asked, what good looks like unless a row says it, and who knows the answer. */
export function QuestionHint({ question, goodInRow = false, children }: QuestionHintProps) {
  return (
    <>
      {question.why}
      {goodInRow ? null : <><br /><b>What good looks like:</b> {question.good}</>}
      {question.keeper === true ? <><br /><b>For the building’s caretaker.</b></> : null}
      {children}
    </>
  );
}

/** A half that is worth nothing must not be chosen as if it were worth half. */
export function LineHint({ line }: { readonly line: TickLine }) {
  const worth = line.partly.state === 'absent' ? ' (counts as no)' : '';
  return <><b>Partly:</b> {line.partly.label}{worth}.{line.keeper === true ? ' The building’s caretaker knows.' : ''}</>;
}

'use client';

import { ChoiceRows } from '@/app/_components/ui/choice-rows';
import { useFormField } from '@/app/_components/form/form-context';
import type { AskedQuestion } from '@/lib/assessments/asked-question';
import type { Question } from '@/lib/content/model';
import { answerField } from '@/lib/questionnaire/field-names';
import { choicesOf, NOT_SURE_HINT } from './choices-of';
import { goodOption } from './good-option';
import { oneValue } from './one-value';
import { QuestionHint } from './question-hint';

/** One answer out of several. */
export function FormChoice({ question, asked }: { readonly question: Extract<Question, { kind: 'choice' }>; readonly asked: AskedQuestion }) {
  const name = answerField(question.id);
  const { id, error, typed } = useFormField(name);
  return (
    <ChoiceRows
      id={id}
      name={name}
      legend={question.text}
      hint={<QuestionHint question={question} goodInRow={goodOption(question) !== null} />}
      error={error}
      choices={choicesOf(question, asked.answer)}
      value={typed ?? oneValue(asked.values, name)}
      notSure={question.notSure}
      notSureHint={NOT_SURE_HINT}
    />
  );
}

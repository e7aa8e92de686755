import { choicesOf, NOT_SURE_HINT } from '@/app/_components/questions/choices-of';
import { goodOption } from '@/app/_components/questions/good-option';
import { ChoiceRows } from '@/app/_components/ui/choice-rows';
import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { withAnswer } from '../_state/edit-document';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

interface ChoiceQuestionProps extends QuestionProps<Extract<Question, { kind: 'choice' }>> { readonly answer: Answer | undefined }

export function ChoiceQuestion({ question, answer, edit }: ChoiceQuestionProps) {
  return (
    <ChoiceRows
      id={questionAnchor(question.id)}
      legend={question.text}
      hint={<QuestionHint question={question} goodInRow={goodOption(question) !== null} />}
      choices={choicesOf(question, answer)}
      value={typeof answer === 'string' ? answer : null}
      onChange={(value) => edit.change((whole) => withAnswer(whole, question.id, value), changeOf(question))}
      notSure={question.notSure}
      notSureHint={NOT_SURE_HINT}
    />
  );
}

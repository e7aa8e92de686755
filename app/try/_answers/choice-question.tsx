import { ChoiceRows } from '@/app/_components/ui/choice-rows';
import type { AnswerOption, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { withAnswer } from '../_state/edit-document';
import { goodOption } from './good-option';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

interface ChoiceQuestionProps extends QuestionProps<Extract<Question, { kind: 'choice' }>> { readonly answer: Answer | undefined }

export function ChoiceQuestion({ question, answer, edit }: ChoiceQuestionProps) {
  const good = goodOption(question);
  return (
    <ChoiceRows
      id={questionAnchor(question.id)}
      legend={question.text}
      hint={<QuestionHint question={question} goodInRow={good !== null} />}
      choices={offered(question.options, answer).map((option) => ({ value: option.id, label: option.label, good: option === good, hint: hintOf(option, option === good ? question.good : undefined) }))}
      value={typeof answer === 'string' ? answer : null}
      onChange={(value) => edit.change((whole) => withAnswer(whole, question.id, value), changeOf(question))}
      notSure={question.notSure}
      notSureHint="Fine to say. It counts as a wide range, never as good."
    />
  );
}

/** What an earlier edition offered stays on the page only where it is the answer that stands. */
function offered(options: readonly AnswerOption[], answer: Answer | undefined): readonly AnswerOption[] {
  return options.filter((option) => option.earlier !== true || option.id === answer);
}

const hintOf = (option: AnswerOption, good: string | undefined): string | undefined => (option.earlier === true ? 'An answer of an earlier edition, no longer offered; it is read cautiously. Choose again.' : good);

import { ChoiceRows } from '@/app/_components/ui/choice-rows';
import type { Question } from '@/lib/content/model';
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
      choices={question.options.map((option) => ({ value: option.id, label: option.label, good: option === good, hint: option === good ? question.good : undefined }))}
      value={typeof answer === 'string' ? answer : null}
      onChange={(value) => edit.change((whole) => withAnswer(whole, question.id, value), changeOf(question))}
      notSure={question.notSure}
      notSureHint="Fine to say. It counts as a wide range, never as good."
    />
  );
}

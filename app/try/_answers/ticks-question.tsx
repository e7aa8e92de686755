import { LineHint } from '@/app/_components/questions/question-hint';
import { FourTicks } from '@/app/_components/ui/four-ticks';
import { linesSaid, type TickQuestion } from '@/lib/questionnaire/ticks';
import { withLine } from '../_state/edit-ticks';
import { answerOf, notSureTicksOf, type WholeDocument } from '../_state/whole-document';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

interface TicksQuestionProps extends QuestionProps<TickQuestion> { readonly whole: WholeDocument }

/** A page of ticks, each line by itself. */
export function TicksQuestion({ question, whole, edit }: TicksQuestionProps) {
  return (
    <FourTicks
      id={questionAnchor(question.id)}
      legend={question.text}
      hint={<QuestionHint question={question} />}
      rows={question.options.map((line) => ({ value: line.id, label: line.label, hint: <LineHint line={line} /> }))}
      ticks={linesSaid(question, answerOf(whole, question.id), notSureTicksOf(whole, question.id))}
      onChange={(line, tick) => edit.change((document) => withLine(document, question, line, tick), changeOf(question))}
    />
  );
}

import { MultiTicks, type Tick } from '@/app/_components/ui/multi-ticks';
import type { Question } from '@/lib/content/model';
import { tickState, withTick } from '../_state/edit-document';
import type { WholeDocument } from '../_state/whole-document';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

type MultiKind = Extract<Question, { kind: 'multi' }>;
interface MultiQuestionProps extends QuestionProps<MultiKind> { readonly whole: WholeDocument }

export function MultiQuestion({ question, whole, edit }: MultiQuestionProps) {
  return (
    <MultiTicks
      id={questionAnchor(question.id)}
      legend={question.text}
      hint={<QuestionHint question={question} />}
      rows={question.options.map((option) => ({ value: option.id, label: option.label }))}
      ticks={ticksOf(question, whole)}
      onChange={(option, tick) => edit.change((document) => withTick(document, question, option, tick), changeOf(question))}
    />
  );
}

function ticksOf(question: MultiKind, whole: WholeDocument): Readonly<Record<string, Tick>> {
  return Object.fromEntries(question.options.flatMap(({ id }): [string, Tick][] => {
    const state = tickState(whole, question, id);
    return state === 'not answered' ? [] : [[id, state]];
  }));
}

'use client';

import { type FourTick, FourTicks } from '@/app/_components/ui/four-ticks';
import { useFormFields } from '@/app/_components/form/form-context';
import type { AskedQuestion } from '@/lib/assessments/asked-question';
import { answerField, partField } from '@/lib/questionnaire/field-names';
import { isTickSaid, type TickQuestion } from '@/lib/questionnaire/ticks';
import { oneValue } from './one-value';
import { LineHint, QuestionHint } from './question-hint';

/** A page of ticks, each line yes, partly, no or not sure. */
export function FormTickLines({ question, asked }: { readonly question: TickQuestion; readonly asked: AskedQuestion }) {
  const field = useFormFields();
  const own = field(answerField(question.id));
  const lineField = (line: string) => {
    const name = partField(question.id, line);
    const { id, error } = field(name);
    return { id, name, error };
  };
  const ticks = Object.fromEntries(question.options.flatMap(({ id }): [string, FourTick][] => {
    const name = partField(question.id, id);
    const said = field(name).typed ?? oneValue(asked.values, name);
    return isTickSaid(said) ? [[id, said]] : [];
  }));
  return (
    <FourTicks
      id={own.id}
      legend={question.text}
      hint={<QuestionHint question={question} />}
      error={own.error}
      rows={question.options.map((line) => ({ value: line.id, label: line.label, hint: <LineHint line={line} /> }))}
      ticks={ticks}
      fieldOf={lineField}
    />
  );
}

'use client';

import { Fieldset } from '@/app/_components/ui/fieldset';
import { TextField } from '@/app/_components/ui/text-field';
import { useFormField } from '@/app/_components/form/form-context';
import type { AskedQuestion } from '@/lib/assessments/asked-question';
import type { Question } from '@/lib/content/model';
import { NOT_SURE } from '@/lib/questionnaire/answer-fault';
import { answerField } from '@/lib/questionnaire/field-names';
import { TEXT_LABELS } from './field-boxes';
import { NotSureBox } from './not-sure-box';
import { allValues } from './one-value';
import { QuestionHint } from './question-hint';

/** One line of text. The box comes before "not sure", which has the same name. */
export function FormTextQuestion({ question, asked }: { readonly question: Extract<Question, { kind: 'text' }>; readonly asked: AskedQuestion }) {
  const name = answerField(question.id);
  const { id, error, typedAll } = useFormField(name);
  const text = (typedAll ?? allValues(asked.values, name)).find((value) => value !== NOT_SURE) ?? '';
  const { asks, maxLength } = question.field;
  return (
    <Fieldset id={`${id}-question`} legend={question.text} hint={<QuestionHint question={question} />}>
      <TextField id={id} name={name} label={TEXT_LABELS[asks ?? 'any']} inputMode={asks === 'telephone number' ? 'tel' : undefined} error={error} defaultValue={text} maxLength={maxLength} />
      <NotSureBox question={question} values={asked.values} />
    </Fieldset>
  );
}

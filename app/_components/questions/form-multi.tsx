'use client';

import { Fieldset } from '@/app/_components/ui/fieldset';
import { useFormFields } from '@/app/_components/form/form-context';
import type { AskedQuestion } from '@/lib/assessments/asked-question';
import type { Question } from '@/lib/content/model';
import { answerField, noneField, openTicksField } from '@/lib/questionnaire/field-names';
import { NotSureBox } from './not-sure-box';
import { allValues } from './one-value';
import { QuestionHint } from './question-hint';

/** A list of ticks, as the first edition asks them. Nothing ticked is "none of these" only when somebody says so. */
export function FormMulti({ question, asked }: { readonly question: Extract<Question, { kind: 'multi' }>; readonly asked: AskedQuestion }) {
  const field = useFormFields();
  const own = field(answerField(question.id));
  const box = (name: string, value: string) => <input type="checkbox" name={name} value={value} defaultChecked={(field(name).typedAll ?? allValues(asked.values, name)).includes(value)} />;
  return (
    <Fieldset id={own.id} legend={question.text} hint={<QuestionHint question={question} />} error={own.error}>
      <ul className="ticks">
        {question.options.map((option) => (
          <li key={option.id} className="tick-line" id={field(`${question.id}.${option.id}`).id} tabIndex={-1}>
            <label className="check">{box(answerField(question.id), option.id)}<span>{option.label}</span></label>
            <label className="check">{box(openTicksField(question.id), option.id)}<span>Not sure<span className="vh">: {option.label}</span></span></label>
          </li>
        ))}
      </ul>
      <label className="check">{box(noneField(question.id), 'yes')}<span>None of these</span></label>
      <NotSureBox question={question} values={asked.values} />
    </Fieldset>
  );
}

'use client';

import { Fieldset } from '@/app/_components/ui/fieldset';
import { NumberField } from '@/app/_components/ui/text-field';
import { useFormFields } from '@/app/_components/form/form-context';
import type { AskedQuestion } from '@/lib/assessments/asked-question';
import type { Question } from '@/lib/content/model';
import { earlierFigures } from '@/lib/questionnaire/earlier-fields';
import { answerField, partField } from '@/lib/questionnaire/field-names';
import { askedFields, boxesOf } from '@/lib/questionnaire/number-boxes';
import { numbersIn } from '@/lib/questionnaire/number-form';
import { earlierWords, FieldBoxes } from './field-boxes';
import { NotSureBox } from './not-sure-box';
import { oneValue } from './one-value';
import { QuestionHint } from './question-hint';

/** Numbers with their units; boxes left empty are not known. */
export function FormNumbers({ question, asked }: { readonly question: Extract<Question, { kind: 'number' }>; readonly asked: AskedQuestion }) {
  const field = useFormFields();
  const own = field(answerField(question.id));
  return (
    <Fieldset id={own.id} legend={question.text} hint={<QuestionHint question={question} />} error={own.error}>
      <div className="number-fields">
        {askedFields(question.fields).map((one) => (
          <FieldBoxes key={one.input} field={one}>
            {boxesOf(one).map((box) => {
              const name = partField(question.id, box.name);
              const { id, error, typed } = field(name);
              return <NumberField key={name} id={id} name={name} label={box.label} unit={box.unit === '' ? undefined : box.unit} error={error} defaultValue={typed ?? oneValue(asked.values, name) ?? ''} />;
            })}
          </FieldBoxes>
        ))}
      </div>
      {earlierFigures(question.fields, numbersIn(asked.answer)).map((figure) => <p key={figure.field.input} className="small">{earlierWords(figure)}</p>)}
      <NotSureBox question={question} values={asked.values} />
    </Fieldset>
  );
}

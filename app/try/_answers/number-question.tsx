'use client';

import { zodResolver } from '@hookform/resolvers/zod';
import { useId, useMemo } from 'react';
import { useForm } from 'react-hook-form';
import { earlierWords, FieldBoxes } from '@/app/_components/questions/field-boxes';
import { Button } from '@/app/_components/ui/button';
import { Fieldset } from '@/app/_components/ui/fieldset';
import { NumberField } from '@/app/_components/ui/text-field';
import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { NOT_SURE } from '@/lib/questionnaire/answer-fault';
import { type EarlierFigure, earlierFigures, withEarlier } from '@/lib/questionnaire/earlier-fields';
import { askedFields, boxesOf } from '@/lib/questionnaire/number-boxes';
import { type Numbers, numberFormSchema, numbersIn, type Typed, typedFrom } from '@/lib/questionnaire/number-form';
import { withAnswer, withNumbers } from '../_state/edit-document';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

interface NumberQuestionProps extends QuestionProps<Extract<Question, { kind: 'number' }>> { readonly answer: Answer | undefined }

/**
 * Numbers with their units. What is typed counts when the question is left, so that nothing is worked out with half
 * a time or half a room; a box that cannot be read keeps what was typed.
 */
export function NumberQuestion({ question, answer, edit }: NumberQuestionProps) {
  const fields = useMemo(() => askedFields(question.fields), [question]);
  const schema = useMemo(() => numberFormSchema(fields), [fields]);
  const values = useMemo(() => typedFrom(fields, answer), [fields, answer]);
  const { register, handleSubmit, formState } = useForm<Typed, unknown, Numbers>({ resolver: zodResolver(schema), values, mode: 'onBlur' });
  const note = useId();
  const leaveOut = ({ field }: EarlierFigure): void => edit.change((whole) => withNumbers(whole, question.id, { ...numbersIn(answer), [field.input]: undefined }), changeOf(question));
  const commit = handleSubmit((numbers) => edit.change((whole) => withNumbers(whole, question.id, withEarlier(question.fields, numbersIn(answer), numbers)), changeOf(question)));
  return (
    <form noValidate onSubmit={commit} onBlur={(event) => { if (!event.currentTarget.contains(event.relatedTarget)) void commit(event); }}>
      <Fieldset id={questionAnchor(question.id)} legend={question.text} hint={<QuestionHint question={question} />}>
        <div className="number-fields">
          {fields.map((field) => (
            <FieldBoxes key={field.input} field={field}>
              {boxesOf(field).map((box) => (
                <NumberField key={box.name} id={`${questionAnchor(question.id)}-${box.name}`} label={box.label} unit={box.unit === '' ? undefined : box.unit} error={formState.errors[box.name]?.message} {...register(box.name)} />
              ))}
            </FieldBoxes>
          ))}
        </div>
        {earlierFigures(question.fields, numbersIn(answer)).map((figure) => (
          <p key={figure.field.input} className="small">{earlierWords(figure)} <Button kind="plain" size="small" onClick={() => leaveOut(figure)}>Leave it out<span className="vh">: {figure.field.label}</span></Button></p>
        ))}
        {answer === NOT_SURE ? <p className="small" id={note}>Not sure: a cautious value is taken, and listed under “What it rests on”.</p> : null}
        {question.notSure && answer !== NOT_SURE ? <Button kind="plain" size="small" onClick={() => edit.change((whole) => withAnswer(whole, question.id, NOT_SURE), changeOf(question))}>Not sure</Button> : null}
      </Fieldset>
    </form>
  );
}

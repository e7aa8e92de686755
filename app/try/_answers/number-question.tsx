'use client';

import { zodResolver } from '@hookform/resolvers/zod';
import { useId, useMemo } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/app/_components/ui/button';
import { Fieldset } from '@/app/_components/ui/fieldset';
import { NumberField } from '@/app/_components/ui/text-field';
import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { NOT_SURE } from '@/lib/questionnaire/validate-answer';
import { withAnswer, withNumbers } from '../_state/edit-document';
import { type Numbers, numberFormSchema, type Typed, typedFrom } from './number-form';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

interface NumberQuestionProps extends QuestionProps<Extract<Question, { kind: 'number' }>> { readonly answer: Answer | undefined }

/** Numbers with their units. What is typed counts when the box is left; a box that cannot be read keeps what was typed. */
export function NumberQuestion({ question, answer, edit }: NumberQuestionProps) {
  const schema = useMemo(() => numberFormSchema(question.fields), [question]);
  const values = useMemo(() => typedFrom(question.fields, answer), [question, answer]);
  const { register, handleSubmit, formState } = useForm<Typed, unknown, Numbers>({ resolver: zodResolver(schema), values, mode: 'onBlur' });
  const note = useId();
  const commit = handleSubmit((numbers) => edit.change((whole) => withNumbers(whole, question.id, numbers), changeOf(question)));
  return (
    <form noValidate onSubmit={commit} onBlur={commit}>
      <Fieldset id={questionAnchor(question.id)} legend={question.text} hint={<QuestionHint question={question} />}>
        <div className="number-fields">
          {question.fields.map((field) => (
            <NumberField
              key={field.input}
              id={`${questionAnchor(question.id)}-${field.input}`}
              label={field.label}
              unit={field.unit}
              error={formState.errors[field.input]?.message}
              {...register(field.input)}
            />
          ))}
        </div>
        {answer === NOT_SURE ? <p className="small" id={note}>Not sure: a cautious value is taken, and listed under “Taken as”.</p> : null}
        {question.notSure && answer !== NOT_SURE ? <Button kind="plain" size="small" onClick={() => edit.change((whole) => withAnswer(whole, question.id, NOT_SURE), changeOf(question))}>Not sure</Button> : null}
      </Fieldset>
    </form>
  );
}

'use client';

import { useState } from 'react';
import { TEXT_LABELS } from '@/app/_components/questions/field-boxes';
import { Button } from '@/app/_components/ui/button';
import { Fieldset } from '@/app/_components/ui/fieldset';
import { TextField } from '@/app/_components/ui/text-field';
import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { NOT_SURE } from '@/lib/questionnaire/answer-fault';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';
import { withAnswer } from '../_state/edit-document';
import { changeOf, questionAnchor, QuestionHint, type QuestionProps } from './question-parts';

interface TextQuestionProps extends QuestionProps<Extract<Question, { kind: 'text' }>> { readonly answer: Answer | undefined }

/** One line of text; it counts when the box is left, if it can be taken. */
export function TextQuestion({ question, answer, edit }: TextQuestionProps) {
  const [error, setError] = useState<string | undefined>(undefined);
  const [asked, setAsked] = useState<string | null>(null);
  const given = typeof answer === 'string' && answer !== NOT_SURE ? answer : '';
  const commit = (typed: string): void => {
    const check = validateAnswer(question, typed);
    setError(check.ok ? undefined : `Enter ${check.faults[0]?.expected ?? 'one line of text'}`);
    setAsked(check.ok ? null : typed);
    if (check.ok && typed !== given) edit.change((whole) => withAnswer(whole, question.id, typed === '' ? undefined : typed), changeOf(question));
  };
  return (
    <Fieldset id={questionAnchor(question.id)} legend={question.text} hint={<QuestionHint question={question} />}>
      <TextField key={given} id={`${questionAnchor(question.id)}-text`} label={TEXT_LABELS[question.field.asks ?? 'any']} inputMode={question.field.asks === 'telephone number' ? 'tel' : undefined} error={error} defaultValue={asked ?? given} maxLength={question.field.maxLength} onBlur={(event) => commit(event.currentTarget.value)} />
      {answer === NOT_SURE ? <p className="small">Not sure.</p> : <Button kind="plain" size="small" onClick={() => edit.change((whole) => withAnswer(whole, question.id, NOT_SURE), changeOf(question))}>Not sure</Button>}
    </Fieldset>
  );
}

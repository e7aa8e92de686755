'use client';

import { Disclosure } from '@/app/_components/ui/disclosure';
import { FormHidden, FormText } from '@/app/_components/form/form-fields';
import { FormPhotos } from '@/app/_components/form/form-photos';
import { useFormField } from '@/app/_components/form/form-context';
import type { AskedQuestion } from '@/lib/assessments/asked-question';
import { noteField, photoField, SHOWN_FIELD, seenField } from '@/lib/assessments/page-fields';
import { AnswerPhotos } from './answer-photos';
import { FormChoice } from './form-choice';
import { FormConflict } from './form-conflict';
import { FormMulti } from './form-multi';
import { FormNumbers } from './form-numbers';
import { FormTextQuestion } from './form-text';
import { FormTickLines } from './form-tick-lines';
import { RegisterNote } from './register-note';

interface FormQuestionProps {
  readonly asked: AskedQuestion;
  /** whom a note is for */
  readonly noteLabel: string;
  /** photos can be added and taken away */
  readonly withPhotos?: boolean;
}

/** One question in a form that is sent whole, with what is known of its answer and room for a note. */
export function FormQuestion({ asked, noteLabel, withPhotos = false }: FormQuestionProps) {
  const { question, note, by, waitsFor, photos } = asked;
  const photoFault = useFormField(photoField(question.id)).error;
  const typedNote = useFormField(noteField(question.id));
  return (
    <li className="question">
      <FormConflict question={question.id} />
      <AnyQuestion asked={asked} />
      {waitsFor === '' ? null : <p className="small">Sent to {waitsFor}. It can be answered here too.</p>}
      <RegisterNote asked={asked} />
      {by === null ? null : <p className="small muted">{by}</p>}
      <FormHidden name={SHOWN_FIELD} value={question.id} />
      <SeenRevision asked={asked} />
      <AnswerPhotos photos={photos} question={question.text} mayDrop={withPhotos} />
      <Disclosure summary={withPhotos ? `${noteLabel}, photo` : noteLabel} isOpen={note !== '' || (typedNote.typed ?? '') !== '' || typedNote.error !== undefined || photoFault !== undefined}>
        <div className="stack fields">
          <FormText name={noteField(question.id)} label={`${noteLabel}: ${question.text}`} rows={3} value={note} />
          {withPhotos ? <FormPhotos name={photoField(question.id)} label={`Photos: ${question.text}`} hint="Of things, not of people. The place where it was taken is removed." /> : null}
        </div>
      </Disclosure>
    </li>
  );
}

/** What a person has seen does not change because the page was drawn again with faults. */
function SeenRevision({ asked: { question, seen } }: { readonly asked: AskedQuestion }) {
  const { typed } = useFormField(seenField(question.id));
  return <FormHidden name={seenField(question.id)} value={typed ?? String(seen)} />;
}

function AnyQuestion({ asked }: { readonly asked: AskedQuestion }) {
  const { question } = asked;
  switch (question.kind) {
    case 'choice': return <FormChoice question={question} asked={asked} />;
    case 'ticks': return <FormTickLines question={question} asked={asked} />;
    case 'multi': return <FormMulti question={question} asked={asked} />;
    case 'number': return <FormNumbers question={question} asked={asked} />;
    case 'text': return <FormTextQuestion question={question} asked={asked} />;
  }
}

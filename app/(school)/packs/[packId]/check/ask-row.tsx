'use client';

import { useFormField } from '@/app/_components/form/form-context';
import { FieldError } from '@/app/_components/ui/field';
import { ANSWERS } from '@/lib/packs/checks/check-answers';

interface AskRowProps {
  readonly name: string;
  readonly ask: string;
  /** answered on this page before */
  readonly value: string | undefined;
  /** besides yes, no and not sure */
  readonly more?: { readonly value: string; readonly word: string };
  readonly onAnswer: (name: string, answer: string) => void;
}

const WORDS = { yes: 'Yes', no: 'No', 'not sure': 'Not sure' } as const;

/** One sign: yes, no or not sure, each as wide as a thumb. Nothing is chosen beforehand. */
export function AskRow({ name, ask, value, more, onAnswer }: AskRowProps) {
  const { id, error, typed } = useFormField(name);
  const chosen = typed ?? value;
  const choices = [...ANSWERS.map((answer) => ({ value: answer as string, word: WORDS[answer] as string })), ...(more === undefined ? [] : [more])];
  return (
    <fieldset id={id} tabIndex={-1} className={error === undefined ? 'four-line' : 'four-line bad'} aria-describedby={error === undefined ? undefined : `${id}-error`}>
      <legend>{ask}</legend>
      {error === undefined ? null : <FieldError id={`${id}-error`}>{error}</FieldError>}
      <div className={more === undefined ? 'seg three' : 'seg four'}>
        {choices.map((choice) => (
          <label key={choice.value}>
            <input type="radio" name={name} value={choice.value} defaultChecked={choice.value === chosen} onChange={() => onAnswer(name, choice.value)} />
            <span>{choice.word}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

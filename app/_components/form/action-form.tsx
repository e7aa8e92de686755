'use client';

import { type ReactNode, useActionState } from 'react';
import { FRESH_FORM, type FormAction, type FormState } from '@/lib/forms/form-state';
import { ErrorSummary } from '../ui/error-summary';
import { fieldId, FormContext } from './form-context';

interface ActionFormProps<Data> {
  readonly action: FormAction<Data>;
  /** names the form and keeps its ids apart from those of other forms on the page */
  readonly id?: string;
  /** stands over the faults */
  readonly faultsTitle?: string;
  readonly children: ReactNode;
}

/**
 * A form whose action answers with faults, or with a sentence when it is done and the page stays. Works as a plain POST
 * when no script runs. Its fields (`FormLine`, `FormChoices`, …) find their faults and what was typed by themselves.
 */
export function ActionForm<Data = undefined>({ action, id = '', faultsTitle = 'Not saved yet. Look at this again', children }: ActionFormProps<Data>) {
  const fresh: FormState<Data> = FRESH_FORM;
  const [state, submit, pending] = useActionState(action, fresh);
  const faults = state.faults.map((fault) => ({ ...fault, field: fault.field === null ? null : fieldId(id, fault.field) }));
  return (
    <form action={submit} id={id === '' ? undefined : id} className="stack fields" noValidate>
      {faults.length > 0 ? <ErrorSummary title={faultsTitle} faults={faults} attempt={state.attempt} /> : null}
      {state.done === undefined ? null : <p role="status" className="notice done" key={`done ${state.attempt}`}>{state.done}</p>}
      {/* A new key after each answer: React puts a form back to its first values, also those of a select. */}
      <FormContext value={{ state, prefix: id, pending }} key={state.attempt}>{children}</FormContext>
    </form>
  );
}

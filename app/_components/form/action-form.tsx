'use client';

import { type ReactNode, useActionState, useRef } from 'react';
import { FRESH_FORM, type FormAction, type FormState } from '@/lib/forms/form-state';
import { ErrorSummary } from '../ui/error-summary';
import { fieldId, FormContext } from './form-context';
import { KeepTypedSince } from './keep-typed-since';
import { type HeldFields, heldFields } from './typed-since';

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
 * when no script runs. Its fields (`FormLine`, `FormChoices`, …) find their faults and what was typed by themselves; what
 * is typed while the form is on its way stays.
 */
export function ActionForm<Data = undefined>({ action, id = '', faultsTitle = 'Not saved yet. Look at this again', children }: ActionFormProps<Data>) {
  const fresh: FormState<Data> = FRESH_FORM;
  const [state, submit, pending] = useActionState(action, fresh);
  const form = useRef<HTMLFormElement>(null);
  const sent = useRef<HeldFields | null>(null);
  const faults = state.faults.map((fault) => ({ ...fault, field: fault.field === null ? null : fieldId(id, fault.field) }));
  return (
    <form
      action={submit}
      id={id === '' ? undefined : id}
      className="stack fields"
      noValidate
      ref={form}
      onSubmit={(event) => { sent.current = heldFields(event.currentTarget); }}
      // React empties a form after its action; what stands in it would be lost with that.
      onReset={(event) => event.preventDefault()}
    >
      {faults.length > 0 ? <ErrorSummary title={faultsTitle} faults={faults} attempt={state.attempt} /> : null}
      {state.done === undefined ? null : <p role="status" className="notice done" key={`done ${state.attempt}`}>{state.done}</p>}
      <KeepTypedSince form={form} sent={sent} attempt={state.attempt} cameBack={faults.length > 0}>
        {/* A new key after each answer: the fields begin with what the answer holds, a select too. */}
        <FormContext value={{ state, prefix: id, pending }} key={state.attempt}>{children}</FormContext>
      </KeepTypedSince>
    </form>
  );
}

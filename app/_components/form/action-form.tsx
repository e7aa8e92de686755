'use client';

import { type FormEvent, type ReactNode, startTransition, useActionState, useRef } from 'react';
import { FRESH_FORM, type FormAction, type FormState } from '@/lib/forms/form-state';
import { ErrorSummary } from '../ui/error-summary';
import type { FormCheck } from './form-check-list';
import { fieldId, FormContext } from './form-context';
import { KeepTypedSince } from './keep-typed-since';
import { type HeldFields, heldFields } from './typed-since';
import { useFormChecks } from './use-form-checks';

interface ActionFormProps<Data> {
  readonly action: FormAction<Data>;
  /** names the form and keeps its ids apart from those of other forms on the page */
  readonly id?: string;
  /** stands over the faults */
  readonly faultsTitle?: string;
  /** what the browser looks at before anything is sent, by the schema of the action; left out, only the server does */
  readonly check?: FormCheck;
  readonly children: ReactNode;
}

/**
 * A form whose action answers with faults, or with a sentence when it is done and the page stays. Works as a plain POST
 * when no script runs. Its fields (`FormLine`, `FormChoices`, …) find their faults and what was typed by themselves; what
 * is typed while the form is on its way stays.
 */
export function ActionForm<Data = undefined>({ action, id = '', faultsTitle = 'Not saved yet. Look at this again', check, children }: ActionFormProps<Data>) {
  const fresh: FormState<Data> = FRESH_FORM;
  const [state, submit, pending] = useActionState(action, fresh);
  const form = useRef<HTMLFormElement>(null);
  const sent = useRef<HeldFields | null>(null);
  const { errorOf, checkAll, watched, ...checks } = useFormChecks(form, check, state);
  const faults = checks.faults.map((fault) => ({ ...fault, field: fault.field === null ? null : fieldId(id, fault.field) }));
  const onSubmit = (event: FormEvent<HTMLFormElement>): void => {
    const [element, pressed] = [event.currentTarget, pressedIn(event)];
    sent.current = heldFields(element);
    if (check === undefined || pressed?.formNoValidate === true) return;
    event.preventDefault();
    checkAll(() => {
      sent.current = heldFields(element);
      startTransition(() => submit(formDataOf(element, pressed)));
    });
  };
  return (
    <form
      action={submit}
      id={id === '' ? undefined : id}
      className="stack fields"
      noValidate
      ref={form}
      onSubmit={onSubmit}
      {...watched}
      // React empties a form after its action; what stands in it would be lost with that.
      onReset={(event) => event.preventDefault()}
    >
      {faults.length > 0 ? <ErrorSummary title={faultsTitle} faults={faults} attempt={checks.attempt} /> : null}
      {state.done === undefined || faults.length > 0 ? null : <p role="status" className="notice done" key={`done ${state.attempt}`}>{state.done}</p>}
      <KeepTypedSince form={form} sent={sent} attempt={state.attempt} cameBack={state.faults.length > 0}>
        {/* A new key after each answer: the fields begin with what the answer holds, a select too. */}
        <FormContext value={{ state, prefix: id, pending: pending || checks.isChecking, errorOf }} key={state.attempt}>{children}</FormContext>
      </KeepTypedSince>
    </form>
  );
}

function pressedIn(event: FormEvent<HTMLFormElement>): HTMLButtonElement | null {
  const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
  return submitter instanceof HTMLButtonElement ? submitter : null;
}

/** What a form holds, and the button that was pressed, which may show that it is busy by now and count as none. */
function formDataOf(form: HTMLFormElement, pressed: HTMLButtonElement | null): FormData {
  const data = new FormData(form);
  if (pressed !== null && pressed.name !== '') data.append(pressed.name, pressed.value);
  return data;
}

'use client';

import { createContext, use } from 'react';
import { FRESH_FORM, type FormState } from '@/lib/forms/form-state';

interface FormHere {
  readonly state: FormState<unknown>;
  /** put before a field's name, so that two forms of one page do not share ids */
  readonly prefix: string;
  readonly pending: boolean;
  readonly errorOf: (name: string) => string | undefined;
}

export const FormContext = createContext<FormHere>({ state: FRESH_FORM, prefix: '', pending: false, errorOf: () => undefined });

interface FieldHere {
  readonly id: string;
  readonly error: string | undefined;
  /** what was typed into a form that came back with faults; undefined when it was not sent, or was done */
  readonly typed: string | undefined;
  readonly typedAll: readonly string[] | undefined;
}

/** Returns what a field of the form around it is drawn from. */
export function useFormField(name: string): FieldHere {
  return useFormFields()(name);
}

/** The same for any number of fields: what one of them is drawn from, by its name. */
export function useFormFields(): (name: string) => FieldHere {
  const { state, prefix, errorOf } = use(FormContext);
  const cameBack = state.faults.length > 0;
  return (name) => {
    const typed = state.typed[name];
    const typedAll = typed === undefined ? undefined : [typed].flat();
    return {
      id: fieldId(prefix, name),
      error: errorOf(name),
      typed: typedAll?.[0] ?? (cameBack ? '' : undefined),
      typedAll: typedAll ?? (cameBack ? [] : undefined),
    };
  };
}

export function fieldId(prefix: string, name: string): string {
  return prefix === '' ? name : `${prefix}-${name}`;
}

import type { ComponentProps, ReactNode } from 'react';
import { Field } from './field';

interface Labelled {
  readonly id: string;
  readonly label: string;
  readonly hint?: ReactNode;
  readonly error?: string;
}

type Native<Tag extends 'input' | 'textarea' | 'select'> = Omit<ComponentProps<Tag>, 'id' | 'className' | 'children'>;

/** One line of text. */
export function TextField({ id, label, hint, error, ...input }: Labelled & Native<'input'>) {
  return (
    <Field id={id} label={label} hint={hint} error={error}>
      {(attributes) => <input type="text" {...input} {...attributes} className="input" />}
    </Field>
  );
}

interface NumberFieldProps extends Labelled, Omit<Native<'input'>, 'type'> { readonly unit?: string }

/**
 * A number with its unit outside the box. A text input with a decimal keyboard: a number input would drop
 * what it cannot read, and we must show it back with the error.
 */
export function NumberField({ id, label, hint, error, unit, ...input }: NumberFieldProps) {
  return (
    <Field id={id} label={label} hint={hint} error={error} unit={unit}>
      {(attributes) => <input inputMode="decimal" autoComplete="off" {...input} {...attributes} type="text" className="input short" />}
    </Field>
  );
}

/** Several lines of text. */
export function TextArea({ id, label, hint, error, ...area }: Labelled & Native<'textarea'>) {
  return (
    <Field id={id} label={label} hint={hint} error={error}>
      {(attributes) => <textarea {...area} {...attributes} className="area" />}
    </Field>
  );
}

interface SelectFieldProps extends Labelled, Native<'select'> {
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

export function SelectField({ id, label, hint, error, options, ...select }: SelectFieldProps) {
  return (
    <Field id={id} label={label} hint={hint} error={error}>
      {(attributes) => (
        <select {...select} {...attributes} className="select">
          {options.map((option) => <option key={option.value} value={option.value}>{option.label}</option>)}
        </select>
      )}
    </Field>
  );
}

'use client';

import { type ComponentProps, type ReactNode, use } from 'react';
import { Button, type ButtonKind } from '../ui/button';
import { Field } from '../ui/field';
import { NumberField, SelectField, TextArea, TextField } from '../ui/text-field';
import { FormContext, useFormField } from './form-context';

interface Named {
  readonly name: string;
  readonly label: string;
  readonly hint?: ReactNode;
  /** what stands in it before anything was typed */
  readonly value?: string;
}

type LineProps = Named & Pick<ComponentProps<'input'>, 'type' | 'autoComplete' | 'inputMode' | 'maxLength' | 'spellCheck' | 'list' | 'placeholder'>;

/** One line of text. */
export function FormLine({ name, value, ...rest }: LineProps) {
  const { id, error, typed } = useFormField(name);
  return <TextField {...rest} id={id} name={name} error={error} defaultValue={typed ?? value} />;
}

/** A password: never shown again after sending. */
export function FormPassword({ name, autoComplete, ...rest }: Omit<Named, 'value'> & { readonly autoComplete: 'current-password' | 'new-password' }) {
  const { id, error } = useFormField(name);
  return <TextField {...rest} id={id} name={name} type="password" autoComplete={autoComplete} error={error} />;
}

/** A number with its unit; text with a decimal keyboard, so that what cannot be read can be shown again. */
export function FormNumber({ name, value, ...rest }: Named & { readonly unit?: string }) {
  const { id, error, typed } = useFormField(name);
  return <NumberField {...rest} id={id} name={name} error={error} defaultValue={typed ?? value} />;
}

/** Several lines of text. */
export function FormText({ name, value, ...rest }: Named & Pick<ComponentProps<'textarea'>, 'rows' | 'autoComplete'>) {
  const { id, error, typed } = useFormField(name);
  return <TextArea {...rest} id={id} name={name} error={error} defaultValue={typed ?? value} />;
}

/** A file. A browser never puts a chosen file back, so after a fault it has to be chosen again. */
export function FormFile({ name, label, hint, accept }: Omit<Named, 'value'> & { readonly accept: string }) {
  const { id, error } = useFormField(name);
  return <Field id={id} label={label} hint={hint} error={error}>{(attributes) => <input {...attributes} type="file" name={name} accept={accept} className="input" />}</Field>;
}

export interface Option { readonly value: string; readonly label: string; readonly hint?: string }

/** One out of many, in a list that opens. */
export function FormSelect({ name, value, ...rest }: Named & { readonly options: readonly Option[] }) {
  const { id, error, typed } = useFormField(name);
  return <SelectField {...rest} id={id} name={name} error={error} defaultValue={typed ?? value} />;
}

/** A value the person does not see. */
export function FormHidden({ name, value }: { readonly name: string; readonly value: string }) {
  return <input type="hidden" name={name} value={value} />;
}

interface FormSubmitProps {
  readonly kind?: ButtonKind;
  readonly size?: 'normal' | 'small';
  readonly name?: string;
  readonly value?: string;
  /** sends what need not be whole: the browser does not check it first */
  readonly unchecked?: boolean;
  readonly children: ReactNode;
}

/** Sends the form; says that it works while it does. */
export function FormSubmit({ kind = 'main', size, name, value, unchecked, children }: FormSubmitProps) {
  const { pending } = use(FormContext);
  return <Button type="submit" kind={kind} size={size} busy={pending} name={name} value={value} formNoValidate={unchecked}>{children}</Button>;
}

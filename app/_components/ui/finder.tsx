import type { ReactNode } from 'react';
import { Button } from './button';
import { Field } from './field';

interface FinderProps {
  /** the page it asks */
  readonly action: `/${string}`;
  /** name of the words in the address */
  readonly name: 'q' | 'find';
  readonly words: string;
  /** what may be searched for, such as "name, place" */
  readonly placeholder?: string;
  /** what else narrows the list */
  readonly children?: ReactNode;
}

/** Narrows a list by words, and by what stands inside. A plain form: all of it stands in the address, so that a list can be kept and sent. */
export function Finder({ action, name, words, placeholder, children }: FinderProps) {
  return (
    <form role="search" className="finder" action={action}>
      <Field id={name} label="Find">{(attributes) => <input {...attributes} className="input" type="search" name={name} defaultValue={words} placeholder={placeholder} />}</Field>
      {children}
      <Button type="submit">Find</Button>
    </form>
  );
}

interface FinderChoiceProps {
  /** also its name in the address */
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

/** One of a few, inside of a finder. */
export function FinderChoice({ id, label, value, options }: FinderChoiceProps) {
  return (
    <Field id={id} label={label}>
      {(attributes) => <select {...attributes} className="select" name={id} defaultValue={value}>{options.map((option) => <option key={option.value} value={option.value}>{option.label}</option>)}</select>}
    </Field>
  );
}

'use client';

import type { ReactNode } from 'react';
import { Fieldset } from '../ui/fieldset';
import { useFormField } from './form-context';
import type { Option } from './form-fields';

interface FormSegmentProps {
  readonly name: string;
  readonly legend: ReactNode;
  readonly hint?: ReactNode;
  readonly options: readonly Option[];
  /** chosen before anything was sent; left out, nothing is */
  readonly value?: string;
}

/** A few short answers in one line. */
export function FormSegment({ name, legend, hint, options, value }: FormSegmentProps) {
  const { id, error, typed } = useFormField(name);
  const chosen = typed ?? value;
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <div className="seg">
        {options.map((option) => (
          <label key={option.value}>
            <input type="radio" name={name} value={option.value} defaultChecked={option.value === chosen} />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </Fieldset>
  );
}

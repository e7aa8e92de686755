'use client';

import type { ReactNode } from 'react';
import { Field } from '../ui/field';
import { useFormField } from './form-context';

/** Photos out of the camera or the gallery. What was chosen cannot be shown again when a form comes back with faults. */
export function FormPhotos({ name, label, hint }: { readonly name: string; readonly label: string; readonly hint: ReactNode }) {
  const { id, error } = useFormField(name);
  return (
    <Field id={id} label={label} hint={hint} error={error}>
      {(attributes) => <input {...attributes} className="input files" type="file" name={name} accept="image/jpeg,image/png,image/webp" multiple />}
    </Field>
  );
}

'use client';

import { useFormField } from '@/app/_components/form/form-context';
import { Field } from '@/app/_components/ui/field';

/** The file to be checked, as the browser offers it: that works without a script too. */
export function FilePart() {
  const { id, error } = useFormField('file');
  return <Field id={id} label="PDF of the paper" hint="Choose it, or drop it on the button. It is sent to the school’s program, looked at and forgotten." error={error}>{(described) => <input {...described} id={id} name="file" type="file" accept=".pdf,application/pdf" />}</Field>;
}

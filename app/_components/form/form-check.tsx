'use client';

import { useFormField } from './form-context';

/** One thing to tick, by itself. */
export function FormCheck({ name, value, label, checked = false }: { readonly name: string; readonly value: string; readonly label: string; readonly checked?: boolean }) {
  const { typedAll } = useFormField(name);
  return <label className="check"><input type="checkbox" name={name} value={value} defaultChecked={typedAll?.includes(value) ?? checked} /><span>{label}</span></label>;
}

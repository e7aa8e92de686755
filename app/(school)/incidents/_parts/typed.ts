import type { Option } from '@/app/_components/form/form-fields';
import type { Typed } from '@/lib/forms/form-state';

/** What stands in a field that holds one value. */
export function one(typed: Typed, name: string): string | undefined {
  return [typed[name] ?? []].flat()[0];
}

/** What stands in a field that holds several. */
export function all(typed: Typed, name: string): readonly string[] {
  return [typed[name] ?? []].flat();
}

/** A list of the area as a form offers it. */
export function options(list: readonly { readonly id: string; readonly label: string; readonly hint?: string }[]): readonly Option[] {
  return list.map(({ id, label, hint }) => ({ value: id, label, ...(hint === undefined ? {} : { hint }) }));
}

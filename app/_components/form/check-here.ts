import type { FieldErrors, FieldValues, Resolver } from 'react-hook-form';
import type { Fault } from '@/lib/forms/form-state';
import { readForm } from '@/lib/forms/read-form';
import { type FormCheck, loadCheck } from './form-check-list';

/** What a form is checked by in the browser, and the element that holds what was typed. */
export interface CheckedHere { readonly form: { readonly current: HTMLFormElement | null }; readonly check: FormCheck | undefined }

/** Faults of the form as a whole stand under this key, which no field has. */
const WHOLE = 'root';

/** Returns the key of a field's error. To React Hook Form a dot is a way into a value; to us it is part of a name. */
export const errorKey = (name: string): string => name.replaceAll('.', '·');

/**
 * The resolver of every form. It reads the form as its action will, out of the page and not out of values of its own, so
 * that both see the same.
 */
export const checkHere: Resolver<FieldValues, CheckedHere> = async (_values, here) => ({ values: {}, errors: here === undefined ? {} : errorsOf(await faultsHere(here), 'found') });

/** Returns what is wrong with a form as it stands. What cannot be checked here, the server checks: no form is stuck on it. */
export async function faultsHere({ form, check }: CheckedHere): Promise<readonly Fault[]> {
  if (check === undefined) return [];
  try {
    const faultsOf = await loadCheck(check);
    return form.current === null ? [] : faultsOf(readForm(new FormData(form.current)).input);
  } catch (error) {
    console.error('Not checked in this browser:', error);
    return [];
  }
}

/** Returns the faults of an answer as errors; undefined when there are none. */
export function errorsOfAnswer(faults: readonly Fault[]): FieldErrors | undefined {
  return faults.length === 0 ? undefined : errorsOf(faults, 'answered');
}

/** Returns the keys of what the browser found itself: such an error goes when its cause is mended, at whatever field that is. */
export function foundHere(errors: FieldErrors): string[] {
  return Object.entries(errors).filter(([key, error]) => key !== WHOLE && error?.type === 'found').map(([key]) => key);
}

function errorsOf(faults: readonly Fault[], type: 'found' | 'answered'): FieldErrors {
  return Object.fromEntries(faults.map(({ field, message }) => [field === null ? WHOLE : errorKey(field), { type, message }]));
}

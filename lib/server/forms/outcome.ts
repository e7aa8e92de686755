import type { Fault } from '@/lib/forms/form-state';

/** What a use case answers to a form. Faults are for the person at it; anything unexpected is thrown instead. */
export type Outcome<Data = undefined> =
  /** done, and the browser goes to a page of ours */
  | { readonly ok: true; readonly then: `/${string}` }
  /** done, and the page stays */
  | { readonly ok: true; readonly done: string; readonly data?: Data }
  /** not done; `data` is what the page has to show besides the faults */
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly data?: Data };

/** Returns the outcome of a fault that belongs to a field, or to the form as a whole. */
export function refused(field: string | null, message: string): { readonly ok: false; readonly faults: readonly Fault[] } {
  return { ok: false, faults: [{ field, message }] };
}

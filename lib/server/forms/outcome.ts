import type { Fault } from '@/lib/forms/form-state';

/** What a use case answers to a form. Faults are for the person at it; anything unexpected is thrown instead. */
export type Outcome<Data = undefined> =
  /** done, and the browser goes to a page of ours */
  | { readonly ok: true; readonly then: `/${string}` }
  /** done, and the page stays */
  | { readonly ok: true; readonly done: string; readonly data?: Data }
  /** not done; `data` is what the page has to show besides the faults; `anew`: what the page shows is out of date, so it is drawn anew */
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly data?: Data; readonly anew?: true };

/** Returns the outcome of a fault that belongs to a field, or to the form as a whole. */
export function refused(field: string | null, message: string): { readonly ok: false; readonly faults: readonly Fault[] } {
  return { ok: false, faults: [{ field, message }] };
}

/** The same where the page shows what is no longer so: it is drawn anew, so that the next try goes by what stands there now. */
export function overtaken(message: string): { readonly ok: false; readonly faults: readonly Fault[]; readonly anew: true } {
  return { ok: false, faults: [{ field: null, message }], anew: true };
}

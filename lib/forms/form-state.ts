/** Something wrong with a form, in words for the person at it. */
export interface Fault {
  /** name of the field; null when the fault belongs to no single one */
  readonly field: string | null;
  readonly message: string;
}

/** What was typed, by field name; several values where a name stood more than once. */
export type Typed = Readonly<Record<string, string | readonly string[]>>;

/** What a form is drawn from: at first empty, then whatever its action returned. */
export interface FormState<Data = undefined> {
  /** counts the answers of the action, so that focus goes to the summary each time */
  readonly attempt: number;
  readonly faults: readonly Fault[];
  /** shown again in the fields, so that nothing typed is lost */
  readonly typed: Typed;
  /** one sentence, when it was done and the page stays */
  readonly done?: string;
  readonly data?: Data;
}

/** An action as React's `useActionState` calls it; also what a plain POST without client JavaScript runs. */
export type FormAction<Data = undefined> = (before: FormState<Data>, form: FormData) => Promise<FormState<Data>>;

/** A form nobody has sent yet. */
export const FRESH_FORM = { attempt: 0, faults: [], typed: {} } as const satisfies FormState<never>;

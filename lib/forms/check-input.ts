import type { z } from 'zod';
import { faultsOfIssues } from './faults-of-issues';
import type { Fault } from './form-state';
import type { ReadForm } from './read-form';

/** Says what is wrong with what a form holds: the same words in the browser and on the server. */
export type InputCheck = (input: ReadForm['input']) => readonly Fault[];

type Answer = { readonly ok: true } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Returns the check of a schema, and of the reader that looks further at what the schema let through. */
export function bySchema<Schema extends z.ZodType>(schema: Schema, further: (value: z.output<Schema>) => Answer = () => ({ ok: true })): InputCheck {
  return (input) => {
    const parsed = schema.safeParse(input);
    return parsed.success ? faultsIn(further(parsed.data)) : faultsOfIssues(parsed.error.issues);
  };
}

/** Returns the faults of a reader's answer. */
export function faultsIn(answer: Answer): readonly Fault[] {
  return answer.ok ? [] : answer.faults;
}

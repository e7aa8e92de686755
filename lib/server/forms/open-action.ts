import 'server-only';
import type { z } from 'zod';
import type { FormAction } from '@/lib/forms/form-state';
import { answerForm, withInput } from './answer-form';
import type { Outcome } from './outcome';

interface OpenRule<Schema extends z.ZodType, Data> {
  readonly schema: Schema;
  readonly run: (input: z.output<Schema>) => Promise<Outcome<Data>>;
}

/**
 * Returns the action of a form that needs no account: signing in, the first run, an invitation, a caretaker's link.
 * Everything else uses `guardedAction`.
 */
export function openAction<Schema extends z.ZodType, Data = undefined>({ schema, run }: OpenRule<Schema, Data>): FormAction<Data> {
  return (before, form) => answerForm(before, form, (read) => withInput(schema, read, run));
}

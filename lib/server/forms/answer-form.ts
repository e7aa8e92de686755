import 'server-only';
import { refresh } from 'next/cache';
import { redirect, unstable_rethrow } from 'next/navigation';
import type { z } from 'zod';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import type { FormState } from '@/lib/forms/form-state';
import { readForm, type ReadForm } from '@/lib/forms/read-form';
import { faultOfError } from './fault-of-error';
import type { Outcome } from './outcome';

/**
 * Runs what a form asks for and turns its outcome into the form's next state, or into a redirect. What was typed goes
 * back only with faults. Next's own signals (redirect, not found, forbidden) pass through.
 */
export async function answerForm<Data>(before: FormState<Data>, form: FormData, run: (read: ReadForm) => Promise<Outcome<Data>>): Promise<FormState<Data>> {
  const attempt = before.attempt + 1;
  const read = readForm(form);
  try {
    const outcome = await run(read);
    if (!outcome.ok) {
      if (outcome.anew) refresh();
      return { attempt, faults: outcome.faults, typed: read.typed, data: outcome.data };
    }
    if ('then' in outcome) redirect(outcome.then);
    refresh();
    return { attempt, faults: [], typed: {}, done: outcome.done, data: outcome.data };
  } catch (error) {
    unstable_rethrow(error);
    return { attempt, faults: [faultOfError(error)], typed: read.typed };
  }
}

/** Reads the form by its schema and goes on with what it holds, or answers with every fault at once. */
export async function withInput<Schema extends z.ZodType, Data>(schema: Schema, read: ReadForm, run: (input: z.output<Schema>) => Promise<Outcome<Data>>): Promise<Outcome<Data>> {
  const parsed = await schema.safeParseAsync(read.input);
  return parsed.success ? run(parsed.data) : { ok: false, faults: faultsOfIssues(parsed.error.issues) };
}

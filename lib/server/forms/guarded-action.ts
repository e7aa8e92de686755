import 'server-only';
import type { z } from 'zod';
import { mayEver } from '@/lib/access/can';
import type { Action } from '@/lib/access/table';
import type { FormAction } from '@/lib/forms/form-state';
import { currentActor, type Actor } from '../actor';
import { answerForm, withInput } from './answer-form';
import { refused, type Outcome } from './outcome';

interface GuardedRule<Schema extends z.ZodType, Data> {
  /** a row of lib/access; null: whoever is signed in, for what belongs to one's own account */
  readonly may: Action | null;
  readonly schema: Schema;
  readonly run: (input: z.output<Schema>, actor: Actor) => Promise<Outcome<Data>>;
}

const NOT_SIGNED_IN = 'You are no longer signed in, so nothing was saved. Sign in again in another window, then send this from here';
const NOT_ALLOWED = 'Your role does not go so far. Nothing of this was saved';

/**
 * Returns the action of a form of the school: who asks, whether their role goes so far, what they typed, then the use
 * case. Refused before anything is read. That the form comes from our own page, Next has seen before (Origin).
 */
export function guardedAction<Schema extends z.ZodType, Data = undefined>({ may, schema, run }: GuardedRule<Schema, Data>): FormAction<Data> {
  return (before, form) =>
    answerForm(before, form, async (read) => {
      const actor = await currentActor();
      // A redirect would lose what was typed.
      if (!actor) return refused(null, NOT_SIGNED_IN);
      if (may !== null && !mayEver(actor.role, may)) return refused(null, NOT_ALLOWED);
      return withInput(schema, read, (input) => run(input, actor));
    });
}

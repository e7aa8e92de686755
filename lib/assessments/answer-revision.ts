import type { Answer } from '@/lib/core/document';
import { type Decision, yes } from './standing';

/** One answer as it is kept: who gave it last, and a count that goes up with every change. */
export interface KeptAnswer { readonly value: Answer | null; readonly notSureTicks: readonly string[]; readonly note: string; readonly revision: number; readonly by: string }

/** What a page sends: the answer, and the revision that stood on it when it was opened (0: none yet). */
export interface SentAnswer { readonly value: Answer | null; readonly notSureTicks: readonly string[]; readonly note: string; readonly seen: number }

export type AnswerChange = { readonly kind: 'same' } | { readonly kind: 'write'; readonly revision: number } | { readonly kind: 'clear'; readonly revision: number };

/**
 * Whether an answer may be written over what is kept: only by somebody who has seen it. Two people who give
 * the same answer do not disturb each other.
 */
export function reviseAnswer(kept: KeptAnswer | null, sent: SentAnswer): Decision<AnswerChange> {
  const revision = kept?.revision ?? 0;
  if (same(kept, sent)) return yes({ kind: 'same' });
  if (sent.seen !== revision) return { ok: false, why: `${kept?.by ?? 'Somebody'} has changed this answer while you were at it. Both are shown below: choose one and save again.` };
  return yes(sent.value === null ? { kind: 'clear', revision: revision + 1 } : { kind: 'write', revision: revision + 1 });
}

function same(kept: KeptAnswer | null, sent: SentAnswer): boolean {
  if (kept === null) return sent.value === null && sent.note === '';
  return kept.note === sent.note && ordered(kept.value) === ordered(sent.value) && ordered(kept.notSureTicks) === ordered(sent.notSureTicks);
}

/** Text that is equal for equal answers, in whatever order their parts came. */
function ordered(value: unknown): string {
  if (Array.isArray(value)) return JSON.stringify([...(value as readonly unknown[])].sort());
  if (typeof value === 'object' && value !== null) return JSON.stringify(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)));
  return JSON.stringify(value);
}

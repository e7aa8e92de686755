import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';
import type { DocumentRemark } from '@/lib/interchange/checks/remark';
import type { DocumentFault } from '@/lib/interchange/json/fault';

/** To the worker. The text is read and checked there just as the command does, so both say the same. */
export type ScoreRequest =
  | { readonly kind: 'score'; readonly id: number; readonly text: string; readonly draws: number }
  | { readonly kind: 'cancel'; readonly id: number };

/**
 * From the worker: ready once, when it can hear; then for each request refused, or closed, scored, budgets.
 * Any of them may be followed by failed.
 */
export type ScoreReply =
  | { readonly kind: 'ready' }
  | { readonly kind: 'refused'; readonly id: number; readonly faults: readonly DocumentFault[] }
  | { readonly kind: 'closed'; readonly id: number; readonly quick: QuickScore; readonly remarks: readonly DocumentRemark[]; readonly milliseconds: number }
  | { readonly kind: 'scored'; readonly id: number; readonly result: ScoreResult; readonly milliseconds: number }
  | { readonly kind: 'budgets'; readonly id: number; readonly sets: readonly BestSet[]; readonly complete: boolean }
  | { readonly kind: 'failed'; readonly id: number; readonly words: string };

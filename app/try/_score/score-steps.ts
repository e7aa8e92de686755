import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';
import type { DocumentRemark } from '@/lib/interchange/checks/remark';
import type { DocumentFault } from '@/lib/interchange/json/fault';
import type { ScoreReply, ScoreRequest } from './protocol';

/** What the worker needs of the calculation, so that its steps can be tested without a worker. */
export interface ScoreEngine<Read> {
  read(text: string): { readonly ok: true; readonly value: Read } | { readonly ok: false; readonly faults: readonly DocumentFault[] };
  /** what is odd about the document and does not keep it from being scored */
  remarks(document: Read): readonly DocumentRemark[];
  /** closed values only: frequencies, grades, harms, stops; no draws */
  closed(document: Read): QuickScore;
  scored(document: Read, draws: number): ScoreResult;
  /** budgets of effort worth looking at, rising */
  budgets(result: ScoreResult): readonly number[];
  /** a search for the exact best set at one budget after another */
  bestSets(document: Read): (budget: number) => BestSet;
}

/** A search that takes longer ends the list: the next would take longer still, and newer work waits for it. */
const LONGEST_SEARCH_MS = 500;
/** Sets told at once: the page draws itself anew for every reply. */
const SETS_A_REPLY = 8;

/**
 * The answers to one request, the quick ones first: closed values, then the draws, then the best set at
 * each budget. Each step ends where newer work may take over; a step without a reply is only that.
 * @param now milliseconds of any steady clock
 */
export function* scoreSteps<Read>(
  request: Extract<ScoreRequest, { kind: 'score' }>,
  engine: ScoreEngine<Read>,
  now: () => number,
): Generator<ScoreReply | null, void> {
  const { id } = request;
  const started = now();
  const read = engine.read(request.text);
  if (!read.ok) {
    yield { kind: 'refused', id, faults: read.faults };
    return;
  }
  yield { kind: 'closed', id, quick: engine.closed(read.value), remarks: engine.remarks(read.value), milliseconds: now() - started };
  const drawing = now();
  const result = engine.scored(read.value, request.draws);
  yield { kind: 'scored', id, result, milliseconds: now() - drawing };
  yield* budgetSteps(id, engine.bestSets(read.value), engine.budgets(result), now);
}

function* budgetSteps(id: number, search: (budget: number) => BestSet, budgets: readonly number[], now: () => number): Generator<ScoreReply | null, void> {
  const sets: BestSet[] = [];
  for (const budget of budgets) {
    const started = now();
    sets.push(search(budget));
    const last = budget === budgets.at(-1) || now() - started > LONGEST_SEARCH_MS;
    yield last || sets.length % SETS_A_REPLY === 0 ? { kind: 'budgets', id, sets: [...sets], complete: last } : null;
    if (last) return;
  }
}

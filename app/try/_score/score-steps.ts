import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';
import type { DocumentFault } from '@/lib/interchange/json/fault';
import type { ScoreReply, ScoreRequest } from './protocol';

/** What the worker needs of the calculation, so that its steps can be tested without a worker. */
export interface ScoreEngine<Read> {
  read(text: string): { readonly ok: true; readonly value: Read } | { readonly ok: false; readonly faults: readonly DocumentFault[] };
  /** closed values only: frequencies, grades, harms, stops; no draws */
  closed(document: Read): QuickScore;
  scored(document: Read, draws: number): ScoreResult;
  /** budgets of effort worth looking at, rising */
  budgets(result: ScoreResult): readonly number[];
  /** the exact best set at each of these budgets */
  bestSets(document: Read, budgets: readonly number[], draws: number): readonly BestSet[];
}

/** How many budgets are searched between two looks at the post box. */
const BUDGETS_A_STEP = 6;

/**
 * The answers to one request, the quick ones first: closed values, then the draws, then the best set at
 * each budget. Each step ends where newer work may take over.
 * @param now milliseconds of any steady clock
 */
export function* scoreSteps<Read>(
  request: Extract<ScoreRequest, { kind: 'score' }>,
  engine: ScoreEngine<Read>,
  now: () => number,
): Generator<ScoreReply, void> {
  const { id } = request;
  const started = now();
  const read = engine.read(request.text);
  if (!read.ok) {
    yield { kind: 'refused', id, faults: read.faults };
    return;
  }
  yield { kind: 'closed', id, quick: engine.closed(read.value), milliseconds: now() - started };
  const drawing = now();
  const result = engine.scored(read.value, request.draws);
  yield { kind: 'scored', id, result, milliseconds: now() - drawing };
  yield* budgetSteps(id, read.value, engine, engine.budgets(result), request.draws);
}

function* budgetSteps<Read>(id: number, document: Read, engine: ScoreEngine<Read>, budgets: readonly number[], draws: number): Generator<ScoreReply, void> {
  const sets: BestSet[] = [];
  for (let from = 0; from < budgets.length; from += BUDGETS_A_STEP) {
    sets.push(...engine.bestSets(document, budgets.slice(from, from + BUDGETS_A_STEP), draws));
    yield { kind: 'budgets', id, sets: [...sets], done: sets.length, of: budgets.length };
  }
}

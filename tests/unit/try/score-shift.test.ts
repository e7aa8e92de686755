import { describe, expect, it } from 'vitest';
import type { ScoreReply } from '@/app/try/_score/protocol';
import { scoreShift } from '@/app/try/_score/score-shift';
import type { ScoreEngine } from '@/app/try/_score/score-steps';
import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';

const result = (title: string): ScoreResult => ({ title }) as ScoreResult;
const engine: ScoreEngine<string> = {
  read: (text) => (text === 'bad' ? { ok: false, faults: [{ path: '$.id', problem: 'is missing', expected: 'a short name' }] } : { ok: true, value: text }),
  closed: (text) => { if (text === 'broken') throw new Error('a matrix without cells'); return { totalHarm: 1 } as QuickScore; },
  scored: (text) => result(`scored ${text}`),
  budgets: () => Array.from({ length: 8 }, (_, budget) => budget),
  bestSets: (_, budgets) => budgets.map((budget) => ({ budget }) as BestSet),
};

function shift() {
  const posted: ScoreReply[] = [];
  const onRequest = scoreShift(engine, { post: (reply) => posted.push(reply), pause: () => Promise.resolve(), now: () => 0 });
  return { posted, onRequest, kinds: () => posted.map((reply) => `${reply.kind} ${reply.id}`) };
}
const ask = (id: number, text: string) => ({ kind: 'score', id, text, draws: 10 }) as const;

describe('the work of the score worker', () => {
  it('answers with closed values before the draws, and with the budgets last', async () => {
    const { onRequest, kinds, posted } = shift();
    await onRequest(ask(1, 'room'));
    expect(kinds()).toEqual(['closed 1', 'scored 1', 'budgets 1', 'budgets 1']);
    expect(posted.at(-1)).toMatchObject({ done: 8, of: 8 });
  });

  it('tells every fault and computes nothing of a document that cannot be read', async () => {
    const { onRequest, posted } = shift();
    await onRequest(ask(1, 'bad'));
    expect(posted).toEqual([{ kind: 'refused', id: 1, faults: [{ path: '$.id', problem: 'is missing', expected: 'a short name' }] }]);
  });

  it('leaves older work when newer comes in', async () => {
    const { onRequest, kinds } = shift();
    await Promise.all([onRequest(ask(1, 'old')), onRequest(ask(2, 'new'))]);
    expect(kinds()).toEqual(['closed 2', 'scored 2', 'budgets 2', 'budgets 2']);
  });

  it('stops when told to', async () => {
    const { onRequest, kinds } = shift();
    await Promise.all([onRequest(ask(1, 'room')), onRequest({ kind: 'cancel', id: 2 })]);
    expect(kinds()).toEqual([]);
  });

  it('tells an exception in words', async () => {
    const { onRequest, posted } = shift();
    await onRequest(ask(1, 'broken'));
    expect(posted).toEqual([{ kind: 'failed', id: 1, words: 'a matrix without cells' }]);
  });
});

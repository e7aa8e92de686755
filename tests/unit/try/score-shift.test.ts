import { describe, expect, it } from 'vitest';
import type { ScoreReply } from '@/app/try/_score/protocol';
import { scoreShift } from '@/app/try/_score/score-shift';
import type { ScoreEngine } from '@/app/try/_score/score-steps';
import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';

const result = (title: string): ScoreResult => ({ title }) as ScoreResult;
const engine: ScoreEngine<string> = {
  read: (text) => (text === 'bad' ? { ok: false, faults: [{ path: '$.id', problem: 'is missing', expected: 'a short name' }] } : { ok: true, value: text }),
  remarks: (text) => [{ path: '$', remark: `is ${text}` }],
  closed: (text) => { if (text === 'broken') throw new Error('a matrix without cells'); return { totalHarm: 1 } as QuickScore; },
  scored: (text) => result(`scored ${text}`),
  budgets: () => [0, 1],
  bestSets: () => (budget) => ({ budget }) as BestSet,
};

function shift() {
  const posted: ScoreReply[] = [];
  const onRequest = scoreShift(engine, { post: (reply) => posted.push(reply), pause: () => Promise.resolve(), now: () => 0 });
  return { posted, onRequest, kinds: () => posted.map((reply) => (reply.kind === 'ready' ? 'ready' : `${reply.kind} ${reply.id}`)) };
}
const ask = (id: number, text: string) => ({ kind: 'score', id, text, draws: 10 }) as const;

describe('the work of the score worker', () => {
  it('answers with closed values before the draws, and with the budgets last', async () => {
    const { onRequest, kinds, posted } = shift();
    await onRequest(ask(1, 'room'));
    expect(kinds()).toEqual(['closed 1', 'scored 1', 'budgets 1']);
    expect(posted[0]).toMatchObject({ remarks: [{ path: '$', remark: 'is room' }] });
    expect(posted.at(-1)).toMatchObject({ sets: [{ budget: 0 }, { budget: 1 }], complete: true });
  });

  it('tells every fault and computes nothing of a document that cannot be read', async () => {
    const { onRequest, posted } = shift();
    await onRequest(ask(1, 'bad'));
    expect(posted).toEqual([{ kind: 'refused', id: 1, faults: [{ path: '$.id', problem: 'is missing', expected: 'a short name' }] }]);
  });

  it('leaves older work when newer comes in', async () => {
    const { onRequest, kinds } = shift();
    await Promise.all([onRequest(ask(1, 'old')), onRequest(ask(2, 'new'))]);
    expect(kinds()).toEqual(['closed 2', 'scored 2', 'budgets 2']);
  });

  it('stops at a search that takes too long, and says that the list ends there', async () => {
    let clock = 0;
    const posted: ScoreReply[] = [];
    const slow: ScoreEngine<string> = { ...engine, bestSets: () => (budget) => { clock += 600; return { budget } as BestSet; } };
    await scoreShift(slow, { post: (reply) => posted.push(reply), pause: () => Promise.resolve(), now: () => clock })(ask(1, 'room'));
    expect(posted.at(-1)).toEqual({ kind: 'budgets', id: 1, sets: [{ budget: 0 }], complete: true });
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

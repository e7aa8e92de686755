import { describe, expect, it } from 'vitest';
import type { ScoreReply, ScoreRequest } from '@/app/try/_score/protocol';
import { type OpenPort, remarksIn, resultIn, ScoreDesk } from '@/app/try/_score/score-desk';
import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';

const quick = { totalHarm: 1 } as QuickScore;
const result = (title: string): ScoreResult => ({ title }) as ScoreResult;

function desk() {
  const sent: ScoreRequest[] = [];
  let hear: (reply: ScoreReply) => void = () => { throw new Error('no worker was opened'); };
  let fail: (words: string) => void = () => { throw new Error('no worker was opened'); };
  let opened = 0;
  const open: OpenPort = (heard, broke) => {
    opened += 1;
    hear = heard;
    fail = broke;
    return { send: (request) => sent.push(request), end: () => undefined };
  };
  return { desk: new ScoreDesk(open), sent, hear: (reply: ScoreReply) => hear(reply), fail: (words: string) => fail(words), opened: () => opened };
}

describe('asking the score worker', () => {
  it('opens one worker, and only when something is asked', () => {
    const { desk: one, opened } = desk();
    expect(opened()).toBe(0);
    one.ask('a', 10);
    one.ask('b', 10);
    expect(opened()).toBe(1);
  });

  it('drops the answer to an older question', () => {
    const { desk: one, hear } = desk();
    one.ask('a', 10);
    one.ask('b', 10);
    hear({ kind: 'scored', id: 1, result: result('old'), milliseconds: 1 });
    expect(one.current()).toEqual({ stage: 'asked', before: null });
    hear({ kind: 'scored', id: 2, result: result('new'), milliseconds: 1 });
    expect(resultIn(one.current())?.title).toBe('new');
  });

  it('sends nothing before the worker can hear, and then only the newest question', () => {
    const { desk: one, sent, hear } = desk();
    one.ask('a', 10);
    one.ask('b', 10);
    expect(sent).toEqual([]);
    hear({ kind: 'ready' });
    expect(sent).toEqual([{ kind: 'score', id: 2, text: 'b', draws: 10 }]);
  });

  it('keeps the last result while a newer one is worked out', () => {
    const { desk: one, hear } = desk();
    one.ask('a', 10);
    hear({ kind: 'scored', id: 1, result: result('first'), milliseconds: 1 });
    one.ask('b', 10);
    expect(one.current()).toEqual({ stage: 'asked', before: result('first') });
    hear({ kind: 'closed', id: 2, quick, remarks: [], milliseconds: 1 });
    expect(one.current()).toMatchObject({ stage: 'closed', quick, before: result('first') });
  });

  it('keeps what is odd about a document beside its result, and drops it with the document', () => {
    const { desk: one, hear } = desk();
    const remarks = [{ path: '$', remark: 'was written for an earlier edition' }];
    one.ask('a', 10);
    hear({ kind: 'closed', id: 1, quick, remarks, milliseconds: 1 });
    hear({ kind: 'scored', id: 1, result: result('room'), milliseconds: 3 });
    expect(remarksIn(one.current())).toEqual(remarks);
    one.ask('b', 10);
    expect(remarksIn(one.current())).toEqual([]);
  });

  it('adds the best sets to the scored result as they come', () => {
    const { desk: one, hear } = desk();
    one.ask('a', 10);
    hear({ kind: 'scored', id: 1, result: result('room'), milliseconds: 3 });
    hear({ kind: 'budgets', id: 1, sets: [{ budget: 4 } as BestSet], complete: false });
    expect(one.current()).toMatchObject({ stage: 'scored', text: 'a', setsComplete: false, sets: [{ budget: 4 }] });
  });

  it('says in words when the worker cannot be opened or breaks', () => {
    const refusing = new ScoreDesk(() => { throw new Error('workers are not allowed here'); });
    refusing.ask('a', 10);
    expect(refusing.current()).toEqual({ stage: 'failed', words: 'workers are not allowed here' });
    const { desk: one, fail } = desk();
    one.ask('a', 10);
    fail('out of memory');
    expect(one.current()).toEqual({ stage: 'failed', words: 'out of memory' });
  });

  it('stops the work and shows nothing when the page starts again', () => {
    const { desk: one, sent, hear } = desk();
    one.ask('a', 10);
    hear({ kind: 'ready' });
    one.forget();
    hear({ kind: 'closed', id: 1, quick, remarks: [], milliseconds: 1 });
    expect(sent.at(-1)).toEqual({ kind: 'cancel', id: 2 });
    expect(one.current()).toEqual({ stage: 'nothing' });
  });
});

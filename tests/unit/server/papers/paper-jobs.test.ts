import { describe, expect, it } from 'vitest';
import { incidentPaper } from '@/lib/papers/incident-paper';
import type { Paper } from '@/lib/papers/paper';
import type { RenderOptions } from '@/lib/pdf/worker/paper-renderer';
import { madeOnce } from '@/lib/server/papers/made-once';
import { createPaperJobs, type PaperWork } from '@/lib/server/papers/paper-jobs';

const paper = (number: string): Paper => incidentPaper({
  number, incidentNumber: 3, title: 'A pack puffed up', school: 'Tern Lane School', when: 'today', state: 'closed', format: 'A4', language: 'en-GB', madeAt: '2026-11-26T10:00:00.000Z', fingerprint: 'abcd', verifyAt: 'https://school.example/verify',
  twinAt: 'https://school.example/incidents/3/paper', logEnd: null, caution: 'c', recordedBy: 'K. M.', facts: [], packs: [], persons: [], photoHashes: [], followUps: [], actions: [], reviews: [], open: [], officer: { name: 'R. O.', post: 'officer' },
});
const settled = () => new Promise((resolve) => { setTimeout(resolve, 5); });

/** Makes papers when it is told to, and takes note of what it was asked. */
function handMaker() {
  const asked: { readonly number: string; readonly options: RenderOptions; readonly done: (bytes: Uint8Array) => void; readonly fail: (error: Error) => void }[] = [];
  const make = (one: Paper, options: RenderOptions) => new Promise<Uint8Array>((done, fail) => {
    asked.push({ number: one.number, options, done, fail });
    options.signal?.addEventListener('abort', () => fail(new Error('stopped')));
  });
  return { asked, make: madeOnce(make, 2) };
}

describe('a paper that is asked for twice', () => {
  it('is made once, for both and for who comes later; another one by itself', async () => {
    const { asked, make } = handMaker();
    const both = [make(paper('A'), {}), make(paper('A'), {})];
    asked[0]?.done(Uint8Array.of(1));
    expect(await Promise.all([...both, make(paper('A'), {})])).toEqual([Uint8Array.of(1), Uint8Array.of(1), Uint8Array.of(1)]);
    void make(paper('B'), {});
    expect(asked.map(({ number }) => number)).toEqual(['A', 'B']);
  });

  it('is given up only when nobody waits for it any more, and is made anew then', async () => {
    const { asked, make } = handMaker();
    const [first, second] = [new AbortController(), new AbortController()];
    const waiting = [make(paper('A'), { signal: first.signal }), make(paper('A'), { signal: second.signal })].map((one) => expect(one).rejects.toThrow('aborted'));
    first.abort();
    await settled();
    expect(asked[0]?.options.signal?.aborted).toBe(false);
    second.abort();
    await Promise.all(waiting);
    expect(asked[0]?.options.signal?.aborted).toBe(true);
    void make(paper('A'), {});
    expect(asked).toHaveLength(2);
  });

  it('is made anew after it failed, and when it was put away for others', async () => {
    const { asked, make } = handMaker();
    const failing = make(paper('A'), {});
    asked[0]?.fail(new Error('out of memory'));
    await expect(failing).rejects.toThrow('out of memory');
    for (const [index, number] of ['A', 'B', 'C'].entries()) {
      const making = make(paper(number), {});
      asked[index + 1]?.done(Uint8Array.of(index));
      await making;
    }
    await settled();
    void make(paper('C'), {});
    void make(paper('A'), {});
    expect(asked.map(({ number }) => number)).toEqual(['A', 'A', 'B', 'C', 'A']);
  });
});

const KIM = { schoolId: 'ours', personId: 'kim' };
const work = (more: Partial<PaperWork> = {}): PaperWork => ({ key: 'incident 3', title: 'Incident 3', back: '/incidents/3', paper: paper('A'), keep: () => Promise.resolve({ ok: true, then: '/incidents/3/paper' }), ...more });

describe('the making of a paper', () => {
  const setting = (now?: () => number) => { const hand = handMaker(); const notes: unknown[] = []; return { ...hand, notes, jobs: createPaperJobs({ make: hand.make, note: (error) => { notes.push(error); return 'reference 1'; }, now }) }; };

  it('tells its pages, then where it leads on to', async () => {
    const { jobs, asked } = setting();
    const id = jobs.begin(KIM, work());
    asked[0]?.options.onPage?.(1);
    asked[0]?.options.onPage?.(7);
    asked[0]?.options.onPage?.(2);
    expect(jobs.find(KIM, id)).toMatchObject({ phase: 'setting', pages: 7, then: null });
    asked[0]?.done(Uint8Array.of(1));
    await settled();
    expect(jobs.find(KIM, id)).toMatchObject({ phase: 'done', then: '/incidents/3/paper' });
  });

  it('is joined by the same work of the same person, and by nobody else’s', () => {
    const { jobs } = setting();
    const id = jobs.begin(KIM, work());
    expect(jobs.begin(KIM, work())).toBe(id);
    for (const other of [{ schoolId: 'ours', personId: 'lee' }, { schoolId: 'theirs', personId: 'kim' }]) {
      expect(jobs.begin(other, work())).not.toBe(id);
      expect(jobs.find(other, id)).toBeNull();
      expect(jobs.cancel(other, id)).toBe(false);
    }
  });

  it('keeps nothing once it is cancelled, and cannot be cancelled while it is being kept', async () => {
    const { jobs, asked } = setting();
    const kept: string[] = [];
    const cancelled = jobs.begin(KIM, work({ keep: () => { kept.push('first'); return Promise.resolve({ ok: true, then: '/x' }); } }));
    expect(jobs.cancel(KIM, cancelled)).toBe(true);
    asked[0]?.done(Uint8Array.of(1));
    await settled();
    expect([kept, jobs.find(KIM, cancelled)?.phase]).toEqual([[], 'cancelled']);
    const keeping = jobs.begin(KIM, work({ key: 'other', keep: () => new Promise(() => undefined) }));
    asked[1]?.done(Uint8Array.of(1));
    await settled();
    expect(jobs.find(KIM, keeping)?.phase).toBe('keeping');
    expect(jobs.cancel(KIM, keeping)).toBe(false);
  });

  it('says why it was refused, notes what nobody expected, and forgets its end after a while', async () => {
    let clock = 0;
    const { jobs, asked, notes } = setting(() => clock);
    const refused = jobs.begin(KIM, work({ keep: () => Promise.resolve({ ok: false, why: 'Somebody changed it' }) }));
    const failed = jobs.begin(KIM, work({ key: 'b', paper: paper('B') }));
    asked[0]?.done(Uint8Array.of(1));
    asked[1]?.fail(new Error('out of memory'));
    await settled();
    expect(jobs.find(KIM, refused)).toMatchObject({ phase: 'refused', why: 'Somebody changed it' });
    expect(jobs.find(KIM, failed)).toMatchObject({ phase: 'failed', why: 'reference 1' });
    expect(notes).toHaveLength(1);
    clock = 700_000;
    jobs.begin(KIM, work({ key: 'c' }));
    expect(jobs.find(KIM, refused)).toBeNull();
  });
});

import { afterAll, describe, expect, it } from 'vitest';
import { SignatureAppearance, type SignatureAppearanceModel } from '@/lib/pdf/documents/signature-appearance';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { createPaperRenderer } from '@/lib/pdf/worker/paper-renderer';
import type { PaperThread } from '@/lib/pdf/worker/paper-thread';

const model: SignatureAppearanceModel = { width: 234.64, height: 112, name: 'Łukasz', post: 'Safety officer', reason: 'Checked', when: '26 Nov 2026', certificate: '9c41', language: 'en-GB', signedAt: new Date(0) };

describe('the thread that sets papers', () => {
  const renderer = createPaperRenderer({ root: process.cwd() });
  afterAll(() => renderer.close());

  it('gives the same bytes as setting it here, shows numbers for letters that no font has, and goes on after a paper that fails', async () => {
    expect(Buffer.from(await renderer.render('signature-appearance', model)).equals(await renderPaper(<SignatureAppearance model={model} />))).toBe(true);
    await expect(renderer.render('signature-appearance', { ...model, signedAt: new Date(Number.NaN) })).rejects.toThrow('the paper could not be set');
    const odd = await renderer.render('signature-appearance', { ...model, name: '\u{20BB7}' });
    expect(Buffer.from(odd).equals(await renderPaper(<SignatureAppearance model={{ ...model, name: '[U+20BB7]' }} />))).toBe(true);
  });

  it('can be stopped in the middle, and begins anew for the next paper', async () => {
    const stop = new AbortController();
    const given = renderer.render('signature-appearance', model, { signal: stop.signal });
    setTimeout(() => stop.abort(), 1);
    await expect(given).rejects.toThrow('aborted');
    expect((await renderer.render('signature-appearance', model)).length).toBeGreaterThan(1000);
  });
});

/** A thread whose work ends when it is told. */
function handThread() {
  const log: string[] = [];
  const open: { readonly name: string; readonly end: (error?: Error) => void; readonly page: (n: number) => void }[] = [];
  const startThread = (): PaperThread => {
    log.push('start');
    return {
      set: (task, onPage) => new Promise((resolve, reject) => {
        log.push(`set ${task.name}`);
        open.push({ name: task.name, page: onPage, end: (error) => { if (error === undefined) resolve(Uint8Array.of(open.length)); else reject(error); } });
      }),
      stop: () => { log.push('stop'); return Promise.resolve(); },
    };
  };
  return { log, open, startThread };
}
const settled = () => new Promise((resolve) => { setTimeout(resolve, 5); });

describe('papers that wait', () => {
  it('are set one at a time, by one thread, with their pages told', async () => {
    const { log, open, startThread } = handThread();
    const renderer = createPaperRenderer({ root: '', startThread });
    const pages: number[] = [];
    const [a, b] = [renderer.render('signature-appearance', model, { onPage: (page) => pages.push(page) }), renderer.render('signature-appearance', model)];
    await settled();
    expect(open).toHaveLength(1);
    open[0]!.page(1);
    open[0]!.page(2);
    open[0]!.end();
    await a;
    await settled();
    open[1]!.end();
    await b;
    expect(pages).toEqual([1, 2]);
    expect(log).toEqual(['start', 'set signature-appearance', 'set signature-appearance']);
  });

  it('can be given up before they begin', async () => {
    const { log, open, startThread } = handThread();
    const renderer = createPaperRenderer({ root: '', startThread });
    const stop = new AbortController();
    const first = renderer.render('signature-appearance', model);
    const second = renderer.render('signature-appearance', model, { signal: stop.signal });
    await settled();
    stop.abort();
    open[0]!.end();
    await first;
    await expect(second).rejects.toThrow('aborted');
    expect(log).toEqual(['start', 'set signature-appearance']);
  });

  it('get a new thread after one that failed or took too long', async () => {
    const { log, open, startThread } = handThread();
    const renderer = createPaperRenderer({ root: '', startThread, longestMs: 30 });
    const failing = renderer.render('signature-appearance', model);
    await settled();
    open[0]!.end(new Error('out of memory'));
    await expect(failing).rejects.toThrow('out of memory');
    await expect(renderer.render('signature-appearance', model)).rejects.toThrow('timeout');
    await renderer.close();
    expect(log.filter((line) => line !== 'set signature-appearance')).toEqual(['start', 'stop', 'start', 'stop']);
  });
});

import type { PaperModels, PaperName } from '../documents/papers';
import { startPaperThread, type PaperThread } from './paper-thread';
import type { RenderTask } from './protocol';
import { threadEntry } from './thread-entry';

export interface RenderOptions {
  /** told how many pages are set; nobody knows how many there will be before the end */
  readonly onPage?: (pageNumber: number) => void;
  /** gives up waiting, or ends the thread in the middle of the work */
  readonly signal?: AbortSignal;
}

export interface PaperRenderer {
  render<Name extends PaperName>(name: Name, model: PaperModels[Name], options?: RenderOptions): Promise<Uint8Array>;
  close(): Promise<void>;
}

export interface RendererSettings {
  /** folder of the program */
  readonly root: string;
  /** a paper that takes longer is given up, ms */
  readonly longestMs?: number;
  /** starts the thread; a test hands in its own */
  readonly startThread?: (entry: string) => PaperThread;
}

/**
 * Sets papers in a thread of its own, one at a time in the order they were asked for: setting a paper takes a whole
 * processor and a few hundred megabytes, and pages are to be answered meanwhile.
 */
export function createPaperRenderer({ root, longestMs = 180_000, startThread = startPaperThread }: RendererSettings): PaperRenderer {
  let thread: PaperThread | undefined;
  let last: Promise<unknown> = Promise.resolve();

  const stop = async (): Promise<void> => {
    const running = thread;
    thread = undefined;
    await running?.stop();
  };
  const run = async (task: RenderTask, { onPage = () => undefined, signal }: RenderOptions): Promise<Uint8Array> => {
    signal?.throwIfAborted();
    thread ??= startThread(threadEntry(root));
    const limit = AbortSignal.timeout(longestMs);
    const given = signal === undefined ? limit : AbortSignal.any([signal, limit]);
    try {
      return await Promise.race([thread.set(task, onPage), rejectedBy(given)]);
    } catch (error) {
      // A thread that was given up, or that failed, is not to be trusted with the next paper.
      await stop();
      throw error;
    }
  };
  return {
    render: (name, model, options = {}) => {
      const mine = last.then(() => run({ name, model }, options));
      last = mine.catch(() => undefined);
      return mine;
    },
    close: stop,
  };
}

function rejectedBy(signal: AbortSignal): Promise<never> {
  return new Promise((_resolve, reject) => {
    signal.addEventListener('abort', () => reject(signal.reason instanceof Error ? signal.reason : new Error('given up')), { once: true });
  });
}

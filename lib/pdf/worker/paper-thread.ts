import { Worker } from 'node:worker_threads';
import type { RenderAnswer, RenderTask } from './protocol';

/** One worker thread, and what is asked of it now. */
export interface PaperThread {
  /** Sets one paper; a second one must wait until the first is done. Rejects when the thread ends. */
  set(task: RenderTask, onPage: (pageNumber: number) => void): Promise<Uint8Array>;
  stop(): Promise<void>;
}

/**
 * Starts the worker thread. It is started from its source, as all commands of this program are, and not from what
 * the pages are bundled into: fonts and libraries are found where they are installed.
 * @param entry path of the file it begins with, from threadEntry(); handed in, because a bundler that can read the
 * path here takes the whole thread for a part of a page
 */
export function startPaperThread(entry: string): PaperThread {
  const worker = new Worker(entry);
  // It waits for work and must not keep the program from ending.
  worker.unref();
  return {
    set: (task, onPage) => new Promise((resolve, reject) => {
      const end = (settle: () => void): void => {
        worker.off('message', hear).off('error', fail).off('exit', gone).unref();
        settle();
      };
      const hear = (answer: RenderAnswer): void => {
        if (answer.kind === 'page') onPage(answer.pageNumber);
        else if (answer.kind === 'done') end(() => resolve(answer.pdf));
        else end(() => reject(new Error(`the paper could not be set: ${answer.message}`)));
      };
      const fail = (error: unknown): void => end(() => reject(error instanceof Error ? error : new Error(String(error))));
      const gone = (): void => end(() => reject(new Error('the thread that sets papers has ended')));
      worker.on('message', hear).on('error', fail).on('exit', gone).ref();
      worker.postMessage(task);
    }),
    stop: async () => { await worker.terminate(); },
  };
}

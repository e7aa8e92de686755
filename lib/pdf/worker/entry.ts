import { parentPort } from 'node:worker_threads';
import { PAPERS, type PaperName } from '../documents/papers';
import { writableModel } from '../render/fonts/writable';
import { renderPaper } from '../render/render-paper';
import type { RenderAnswer, RenderTask } from './protocol';

// The beginning of the worker thread: sets one paper after another, as they are handed to it.

if (parentPort === null) throw new Error('this file is the beginning of a worker thread');
const port = parentPort;
const answer = (message: RenderAnswer): void => port.postMessage(message);

port.on('message', (task: RenderTask) => {
  setPaper(task).then(
    (pdf) => answer({ kind: 'done', pdf }),
    (error: unknown) => answer({ kind: 'failed', message: error instanceof Error ? error.message : String(error) }),
  );
});

function setPaper<Name extends PaperName>({ name, model }: RenderTask<Name>): Promise<Uint8Array> {
  const pages = new Set<number>();
  return renderPaper(PAPERS[name](writableModel(model)), (pageNumber) => {
    if (pages.has(pageNumber)) return;
    pages.add(pageNumber);
    answer({ kind: 'page', pageNumber });
  });
}

import type { ScoreReply, ScoreRequest } from './protocol';
import { type ScoreEngine, scoreSteps } from './score-steps';

/** What a shift needs from where it runs. */
interface Surroundings {
  readonly post: (reply: ScoreReply) => void;
  /** lets messages that wait come in; resolves soon after */
  readonly pause: () => Promise<void>;
  readonly now: () => number;
}

/**
 * Takes requests as they come; the newest wins. Work on an older one stops at its next step, and a cancel
 * stops all work. An exception is told in words: the page shows it instead of waiting for ever.
 */
export function scoreShift<Read>(engine: ScoreEngine<Read>, { post, pause, now }: Surroundings): (request: ScoreRequest) => Promise<void> {
  let newest = -1;
  return async (request) => {
    newest = request.id;
    if (request.kind === 'cancel') return;
    try {
      const steps = scoreSteps(request, engine, now);
      for (;;) {
        await pause();
        if (newest !== request.id) return;
        const step = steps.next();
        if (step.done === true) return;
        if (step.value !== null) post(step.value);
      }
    } catch (error) {
      post({ kind: 'failed', id: request.id, words: error instanceof Error ? error.message : String(error) });
    }
  };
}

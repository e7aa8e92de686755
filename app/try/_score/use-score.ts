'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { ScoreReply } from './protocol';
import { type OpenPort, ScoreDesk, type ScoreState } from './score-desk';

const NOTHING: ScoreState = { stage: 'nothing' };

const openWorker: OpenPort = (heard, broke) => {
  const worker = new Worker(new URL('../score.worker.ts', import.meta.url), { type: 'module', name: 'score' });
  worker.addEventListener('message', (event: MessageEvent<ScoreReply>) => heard(event.data));
  worker.addEventListener('error', (event) => broke(event.message === '' ? 'the part of the page that calculates could not be loaded' : event.message));
  return { send: (request) => worker.postMessage(request), end: () => worker.terminate() };
};

/**
 * The score of a text, worked out beside the page so that it never freezes. A new text replaces the one
 * under way; null stops the work.
 */
export function useScore(text: string | null, draws: number): ScoreState {
  const [desk] = useState(() => new ScoreDesk(openWorker));
  const state = useSyncExternalStore(desk.subscribe, desk.current, () => NOTHING);
  useEffect(() => () => desk.close(), [desk]);
  useEffect(() => {
    if (text === null) desk.forget();
    else desk.ask(text, draws);
  }, [desk, text, draws]);
  return state;
}

import { bestSetsOf, SET_DRAWS } from '@/lib/core/best-sets';
import { quickScore } from '@/lib/core/quick-score';
import { score } from '@/lib/core/score';
import { seedFromHash } from '@/lib/interchange/input-hash';
import { type AssessmentRead, readAssessment } from '@/lib/interchange/read-assessment';
import { budgetsFor } from './_score/budgets';
import type { ScoreReply, ScoreRequest } from './_score/protocol';
import { scoreShift } from './_score/score-shift';
import type { ScoreEngine } from './_score/score-steps';

type Accepted = Extract<AssessmentRead, { ok: true }>;


/** The seed the command would take. */
const seedOf = ({ document, inputHash }: Accepted): number => document.seed ?? seedFromHash(inputHash);

const engine: ScoreEngine<Accepted> = {
  read: (text) => {
    const read = readAssessment(text);
    return read.ok ? { ok: true, value: read } : read;
  },
  remarks: (read) => read.remarks,
  closed: ({ content, document }) => quickScore(content, document),
  scored: (read, draws) => score(read.content, read.document, { seed: seedOf(read), draws, inputHash: read.inputHash }),
  budgets: budgetsFor,
  bestSets: (read) => bestSetsOf(read.content, read.document, { seed: seedOf(read), draws: SET_DRAWS }),
};

/** Messages that wait come in between two timers; a resolved promise would not let them. */
const pause = (): Promise<void> => new Promise((resolve) => { setTimeout(resolve, 0); });

const take = scoreShift(engine, { post: (reply) => self.postMessage(reply), pause, now: () => performance.now() });
self.addEventListener('message', (event: MessageEvent<ScoreRequest>) => { void take(event.data); });

// What was sent before this listener stood is lost, so the page waits for this word.
self.postMessage({ kind: 'ready' } satisfies ScoreReply);

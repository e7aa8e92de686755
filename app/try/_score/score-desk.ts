import type { QuickScore } from '@/lib/core/quick-score';
import type { BestSet, ScoreResult } from '@/lib/core/result';
import type { DocumentRemark } from '@/lib/interchange/checks/remark';
import type { DocumentFault } from '@/lib/interchange/json/fault';
import type { ScoreReply, ScoreRequest } from './protocol';

/** The part of a worker that the desk uses. */
export interface ScorePort {
  send(request: ScoreRequest): void;
  end(): void;
}

/** Opens a worker that tells its replies and its failures. */
export type OpenPort = (heard: (reply: ScoreReply) => void, broke: (words: string) => void) => ScorePort;

/** What the page knows of the score of the text it asked about last. */
export type ScoreState =
  | { readonly stage: 'nothing' }
  /** asked; the result before, if there is one, may be shown as out of date */
  | { readonly stage: 'asked'; readonly before: ScoreResult | null }
  | { readonly stage: 'refused'; readonly text: string; readonly faults: readonly DocumentFault[] }
  /** closed values of the new text; the full result before still stands for the rest */
  | { readonly stage: 'closed'; readonly text: string; readonly quick: QuickScore; readonly remarks: readonly DocumentRemark[]; readonly before: ScoreResult | null; readonly milliseconds: number }
  | { readonly stage: 'scored'; readonly text: string; readonly result: ScoreResult; readonly remarks: readonly DocumentRemark[]; readonly sets: readonly BestSet[]; /** false while larger budgets are still searched */
    readonly setsComplete: boolean; readonly milliseconds: number }
  | { readonly stage: 'failed'; readonly words: string };

/**
 * Asks the worker and keeps the newest answer; answers to anything older are dropped. One desk, one
 * worker, made when first asked.
 */
export class ScoreDesk {
  private port: ScorePort | null = null;
  private ready = false;
  /** what waits for the worker to be ready: only the newest counts */
  private waiting: ScoreRequest | null = null;
  private lastId = 0;
  private lastText = '';
  private state: ScoreState = { stage: 'nothing' };
  private readonly listeners = new Set<() => void>();

  constructor(private readonly openPort: OpenPort) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => { this.listeners.delete(listener); };
  };

  readonly current = (): ScoreState => this.state;

  ask(text: string, draws: number): void {
    this.lastId += 1;
    this.lastText = text;
    this.become({ stage: 'asked', before: resultIn(this.state) });
    this.openPortOnce();
    this.send({ kind: 'score', id: this.lastId, text, draws });
  }

  /** Stops work that is under way; what was shown before goes too. */
  forget(): void {
    this.lastId += 1;
    this.send({ kind: 'cancel', id: this.lastId });
    this.become({ stage: 'nothing' });
  }

  close(): void {
    this.port?.end();
    this.port = null;
    this.ready = false;
    this.waiting = null;
  }

  private openPortOnce(): void {
    if (this.port !== null) return;
    try {
      this.port = this.openPort((reply) => this.receive(reply), (words) => this.become({ stage: 'failed', words }));
    } catch (error) {
      this.become({ stage: 'failed', words: error instanceof Error ? error.message : String(error) });
    }
  }

  private send(request: ScoreRequest): void {
    if (this.ready) this.port?.send(request);
    else this.waiting = request;
  }

  private becomeReady(): void {
    this.ready = true;
    if (this.waiting !== null) this.port?.send(this.waiting);
    this.waiting = null;
  }

  private receive(reply: ScoreReply): void {
    if (reply.kind === 'ready') { this.becomeReady(); return; }
    if (reply.id !== this.lastId) return;
    const text = this.lastText;
    if (reply.kind === 'failed') this.become({ stage: 'failed', words: reply.words });
    else if (reply.kind === 'refused') this.become({ stage: 'refused', text, faults: reply.faults });
    else if (reply.kind === 'closed') this.become({ stage: 'closed', text, quick: reply.quick, remarks: reply.remarks, before: resultIn(this.state), milliseconds: reply.milliseconds });
    else if (reply.kind === 'scored') this.become({ stage: 'scored', text, result: reply.result, remarks: remarksIn(this.state), sets: [], setsComplete: false, milliseconds: reply.milliseconds });
    else if (this.state.stage === 'scored') this.become({ ...this.state, sets: reply.sets, setsComplete: reply.complete });
  }

  private become(state: ScoreState): void {
    this.state = state;
    for (const listener of this.listeners) listener();
  }
}

/** The full result a state carries, or the last one it may still show. */
export function resultIn(state: ScoreState): ScoreResult | null {
  if (state.stage === 'scored') return state.result;
  return state.stage === 'asked' || state.stage === 'closed' ? state.before : null;
}

/** What is odd about the text that the state is about; nothing while that is not known. */
export function remarksIn(state: ScoreState): readonly DocumentRemark[] {
  return state.stage === 'closed' || state.stage === 'scored' ? state.remarks : [];
}

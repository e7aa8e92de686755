import type { WholeDocument } from './whole-document';

/** Where the document on the page came from. */
export type Source =
  | { readonly kind: 'example'; readonly example: string }
  | { readonly kind: 'own'; readonly name: string };

/** A document that is open, and how it got there. */
export interface OpenDocument { readonly whole: WholeDocument; readonly source: Source; readonly edited: boolean }

/** How many changes can be taken back. */
export const UNDO_DEPTH = 50;

interface Step { readonly before: OpenDocument | null; readonly what: string }

export interface PageState {
  readonly open: OpenDocument | null;
  /** what can be taken back, the last change last */
  readonly past: readonly Step[];
  /** what cannot be kept for a reload, in words, or null */
  readonly trouble: string | null;
}

export type PageEvent =
  | { readonly type: 'opened'; readonly whole: WholeDocument; readonly source: Source }
  | { readonly type: 'changed'; readonly change: (whole: WholeDocument) => WholeDocument; readonly what: string }
  | { readonly type: 'undone' }
  | { readonly type: 'started again' }
  | { readonly type: 'troubled'; readonly words: string }
  | { readonly type: 'restored'; readonly state: PageState };

export const NOTHING_OPEN: PageState = { open: null, past: [], trouble: null };

/**
 * The page after an event. Pure: the same state and event give the same page. Nothing is thrown away
 * that cannot be taken back: opening another document and starting again are steps like an answer.
 */
export function pageReducer(state: PageState, event: PageEvent): PageState {
  switch (event.type) {
    case 'restored': return event.state;
    case 'troubled': return { ...state, trouble: event.words };
    case 'undone': return undo(state);
    case 'started again': return state.open === null ? state : step(state, null, 'start again');
    case 'opened': return step(state, { whole: event.whole, source: event.source, edited: false }, 'open another room');
    case 'changed': return change(state, event);
  }
}

/** What "Undo" would take back, in words, or null. */
export function undoable(state: PageState): string | null {
  return state.past.at(-1)?.what ?? null;
}

function change(state: PageState, event: Extract<PageEvent, { type: 'changed' }>): PageState {
  if (state.open === null) return state;
  const whole = event.change(state.open.whole);
  if (JSON.stringify(whole) === JSON.stringify(state.open.whole)) return state;
  return step(state, { ...state.open, whole, edited: true }, event.what);
}

function step(state: PageState, open: OpenDocument | null, what: string): PageState {
  if (state.open === null && open !== null && state.past.length === 0) return { ...state, open };
  return { ...state, open, past: [...state.past, { before: state.open, what }].slice(-UNDO_DEPTH) };
}

function undo(state: PageState): PageState {
  const last = state.past.at(-1);
  return last === undefined ? state : { ...state, open: last.before, past: state.past.slice(0, -1) };
}

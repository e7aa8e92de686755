'use client';

import { type Dispatch, useEffect, useReducer, useRef } from 'react';
import { exampleById } from '../_open/example-list';
import { NOTHING_OPEN, type PageEvent, pageReducer, type PageState, type Source } from './page-state';
import { keep, readKept } from './session-store';

/** The page's state, kept for a reload of this tab, with an address that can be shared when it shows an example. */
export function usePageState(exampleId: string | null): readonly [PageState, Dispatch<PageEvent>] {
  const [state, dispatch] = useReducer(pageReducer, exampleId, opening);
  const restored = useRef(false);
  useEffect(() => {
    if (restored.current) return;
    restored.current = true;
    const kept = readKept(window.sessionStorage);
    dispatch(kept.ok ? { type: 'restored', state: joined(kept.state, exampleId) } : { type: 'troubled', words: kept.reason });
  }, [exampleId]);
  useEffect(() => {
    if (!restored.current) return;
    const reason = keep(window.sessionStorage, state);
    if (reason !== null && reason !== state.trouble) dispatch({ type: 'troubled', words: reason });
    keepAddress(state.open?.source ?? null);
  }, [state]);
  return [state, dispatch];
}

/** Before anything kept is known: the example the address asks for, or nothing. */
function opening(exampleId: string | null): PageState {
  return withExample(NOTHING_OPEN, exampleId);
}

/** What the tab kept stays, unless the address asks for another example; then that is one step that can be undone. */
function joined(kept: PageState, exampleId: string | null): PageState {
  const source = kept.open?.source;
  const same = exampleId === null || (source?.kind === 'example' && source.example === exampleId);
  return same && kept.open !== null ? kept : withExample(kept, exampleId);
}

function withExample(state: PageState, exampleId: string | null): PageState {
  const example = exampleById(exampleId);
  if (example === undefined) return state;
  return pageReducer(state, { type: 'opened', whole: example.whole, source: { kind: 'example', example: example.id } });
}

function keepAddress(source: Source | null): void {
  const wanted = source?.kind === 'example' ? `/try?example=${source.example}` : '/try';
  if (window.location.pathname + window.location.search === wanted) return;
  window.history.replaceState(null, '', wanted + window.location.hash);
}

'use client';

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Source } from './_state/page-state';
import { usePageState } from './_state/use-page-state';
import type { Ways } from './_state/ways';
import type { WholeDocument } from './_state/whole-document';
import { ChooseRoom } from './choose-room';
import { OpenRoom } from './open-room';

/** Draws behind every range on the page, as many as the command takes. */
const DRAWS = 4000;

/** One room in this browser: chosen, changed and worked out without anything leaving it. */
export function TryRoom({ exampleId }: { readonly exampleId: string | null }) {
  const [state, dispatch] = usePageState(exampleId);
  const arrive = useArrival();
  const ways = useMemo((): Ways => ({
    open: (whole: WholeDocument, source: Source): void => { dispatch({ type: 'opened', whole, source }); arrive(); },
    change: (change: (whole: WholeDocument) => WholeDocument, what: string): void => dispatch({ type: 'changed', change, what }),
    undo: (): void => dispatch({ type: 'undone' }),
    startAgain: (): void => { dispatch({ type: 'started again' }); arrive(); },
  }), [dispatch, arrive]);
  if (state.open === null) return <ChooseRoom state={state} ways={ways} />;
  return <OpenRoom open={state.open} state={state} ways={ways} draws={DRAWS} />;
}

/** Another room is another page to read: from its top, also for those who hear it, once it is on the page. */
function useArrival(): () => void {
  const [arrivals, setArrivals] = useState(0);
  const seen = useRef(0);
  useEffect(() => {
    if (arrivals === seen.current) return;
    seen.current = arrivals;
    window.scrollTo({ top: 0 });
    document.getElementById('main')?.focus({ preventScroll: true });
  }, [arrivals]);
  return useCallback(() => setArrivals((count) => count + 1), []);
}

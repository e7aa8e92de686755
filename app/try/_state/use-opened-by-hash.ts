'use client';

import { useCallback, useEffect, useState } from 'react';
import { useIsPrinted } from './use-is-printed';

/**
 * Whether a part of the page is open; a link to anything inside opens it, brings it into view and gives it
 * the focus, also when the page itself is opened with that link. On paper every part is open.
 * @param owns whether an anchor lies in this part; keep it the same from render to render
 */
export function useOpenedByHash(owns: (anchor: string) => boolean): { readonly open: boolean; readonly setOpen: (open: boolean) => void } {
  const [open, setOpen] = useState(false);
  const printed = useIsPrinted();
  useEffect(() => {
    const look = (): void => {
      const anchor = hashAnchor();
      if (anchor === '' || !owns(anchor)) return;
      setOpen(true);
      requestAnimationFrame(() => bringIntoView(anchor));
    };
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, [owns]);
  const toggle = useCallback((next: boolean) => {
    if (printed) return;
    setOpen(next);
    if (!next && owns(hashAnchor())) forgetHash();
  }, [owns, printed]);
  return { open: open || printed, setOpen: toggle };
}

const hashAnchor = (): string => decodeURIComponent(window.location.hash.slice(1));

/** So that the same link opens a part again that was closed by hand. */
function forgetHash(): void {
  window.history.replaceState(null, '', window.location.pathname + window.location.search);
}

function bringIntoView(anchor: string): void {
  const target = document.getElementById(anchor);
  if (target === null) return;
  target.scrollIntoView();
  const focusable = target.matches('details') ? target.querySelector<HTMLElement>('summary') : target;
  focusable?.focus({ preventScroll: true });
}

'use client';

import { useSyncExternalStore } from 'react';
import { flushSync } from 'react-dom';

const listeners = new Set<() => void>();
let printed = false;

/** The page must be whole before the browser takes its picture of it, so this does not wait for a frame. */
function become(next: boolean): void {
  if (next === printed) return;
  printed = next;
  flushSync(() => { for (const listener of listeners) listener(); });
}

const begin = (): void => become(true);
const end = (): void => become(false);
const look = (event: MediaQueryListEvent): void => become(event.matches);

function subscribe(listener: () => void): () => void {
  if (listeners.size === 0) listen('addEventListener');
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
    if (listeners.size === 0) listen('removeEventListener');
  };
}

function listen(way: 'addEventListener' | 'removeEventListener'): void {
  window[way]('beforeprint', begin);
  window[way]('afterprint', end);
  printMedia()[way]('change', look as EventListener);
}

let media: MediaQueryList | null = null;
/** One object for both ways: a listener is taken off the one it was put on. */
function printMedia(): MediaQueryList {
  media ??= window.matchMedia('print');
  return media;
}

/** Whether the page is on its way to paper, where nothing can be opened by hand: what is closed is shown. */
export function useIsPrinted(): boolean {
  return useSyncExternalStore(subscribe, () => printed, () => false);
}

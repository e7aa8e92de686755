'use client';

import { useEffect } from 'react';

/** At the root, since a worker serves nothing above its own folder; it serves the pages below /emergency alone. */
const WORKER = '/emergency-worker.js';

/** Keeps the emergency pages on this device, anew with each page that is loaded whole, so that they open without a network. */
export function KeepEmergency() {
  useEffect(() => {
    if (!('serviceWorker' in navigator)) return;
    navigator.serviceWorker.register(WORKER, { scope: '/emergency' }).then(
      ({ active }) => active?.postMessage('renew'),
      (error: unknown) => console.warn('The emergency pages are not kept on this device:', error),
    );
  }, []);
  return null;
}

'use client';

import { useEffect } from 'react';

/** At the root, since a worker serves nothing above its own folder; it serves the pages below /emergency alone. */
const WORKER = '/emergency-worker.js';

/**
 * Keeps the emergency pages on this device, so that they open without a network. Those are fetched anew only from other
 * pages: in an emergency nothing else may take the network.
 */
export function KeepEmergency({ anew }: { readonly anew: boolean }) {
  useEffect(() => {
    if (!('serviceWorker' in navigator)) return;
    navigator.serviceWorker.register(WORKER, { scope: '/emergency' }).then(
      ({ active }) => { if (anew) active?.postMessage('renew'); },
      (error: unknown) => console.warn('The emergency pages are not kept on this device:', error),
    );
  }, [anew]);
  return null;
}

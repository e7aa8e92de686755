'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';

/** Says when there is no network, and does not send the form then: what is typed stays on this device. */
export function NetworkNotice({ formId }: { readonly formId: string }) {
  const online = useSyncExternalStore(onChange, () => navigator.onLine, () => true);
  const [was, setWas] = useState(false);
  useEffect(() => {
    if (online) return;
    const form = document.getElementById(formId);
    const hold = (event: Event) => { event.preventDefault(); event.stopImmediatePropagation(); setWas(true); };
    form?.addEventListener('submit', hold, { capture: true });
    return () => form?.removeEventListener('submit', hold, { capture: true });
  }, [online, formId]);
  if (online) return was ? <div className="notice done" role="status"><p>The network is back. Save it now.</p></div> : null;
  return <div className="notice unsure" role="status"><p><b>No network.</b> What you type stays on this device, photos do not. The safety officer is told when the network is back and you have saved. If anybody is hurt, telephone now.</p></div>;
}

function onChange(changed: () => void): () => void {
  window.addEventListener('online', changed);
  window.addEventListener('offline', changed);
  return () => { window.removeEventListener('online', changed); window.removeEventListener('offline', changed); };
}

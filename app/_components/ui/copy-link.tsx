'use client';

import { useState, useSyncExternalStore } from 'react';
import { Button } from './button';

/** An address to pass on: shown whole, so that it can be copied without a script, with a button where one runs. */
export function CopyLink({ address, label }: { readonly address: string; readonly label: string }) {
  const [copied, setCopied] = useState(false);
  const canCopy = useSyncExternalStore(never, () => 'clipboard' in navigator, () => false);
  return (
    <div className="copy-link">
      <input className="input" readOnly value={address} aria-label={label} onFocus={(event) => event.currentTarget.select()} />
      {canCopy ? <Button size="small" onClick={() => void navigator.clipboard.writeText(address).then(() => setCopied(true))}>Copy</Button> : null}
      <span role="status" className="small muted">{copied ? 'Copied' : ''}</span>
    </div>
  );
}

/** Whether a browser can copy does not change. */
const never = () => () => undefined;

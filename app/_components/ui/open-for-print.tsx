'use client';

import { useEffect } from 'react';

/** Opens what is closed before the page is printed, and closes it again: paper cannot be opened by hand. */
export function OpenForPrint() {
  useEffect(() => {
    let opened: readonly HTMLDetailsElement[] = [];
    const open = (): void => {
      opened = [...opened, ...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
      for (const part of opened) part.open = true;
    };
    const close = (): void => {
      for (const part of opened) part.open = false;
      opened = [];
    };
    window.addEventListener('beforeprint', open);
    window.addEventListener('afterprint', close);
    return () => { window.removeEventListener('beforeprint', open); window.removeEventListener('afterprint', close); };
  }, []);
  return null;
}

'use client';

import { Button } from '@/app/_components/ui/button';

/** Opens the browser's own print window; without a script its menu does the same. */
export function PrintButton() {
  return <Button kind="main" onClick={() => window.print()}>Print</Button>;
}
